-- a note that its writer keeps from the child's other caregivers
alter table sign_report add column team_only boolean default false not null;
