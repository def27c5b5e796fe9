package org.hearthway.base;

/** What a person is to the clinic. A person may hold several; a caregiver's reach is set per child besides. */
public enum Role {
    CAREGIVER,
    /** Helps a child outside the clinic, for a time: a therapist nearby, an aide at school. */
    HELPER,
    THERAPIST,
    PHYSICIAN,
    NURSE,
    COORDINATOR,
    ADMINISTRATOR;

    /** Whether this role works at the clinic. */
    public boolean isStaff() {
        return this != CAREGIVER && this != HELPER;
    }
}
