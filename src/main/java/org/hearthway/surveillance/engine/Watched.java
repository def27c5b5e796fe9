package org.hearthway.surveillance.engine;

/** What is watched over the years. */
public enum Watched {
    /** By X-ray: how far the head of the femur lies outside its socket. */
    HIPS,
    /** By eye and hand, by X-ray where the team asks for one. */
    SPINE
}
