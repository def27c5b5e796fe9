package org.hearthway.figure.engine;

/** What lies over what in a picture, from the back to the front. */
final class Layer {

    static final int GROUND = 0;
    static final int GHOST = 1;
    static final int BACK = 2;
    static final int HELPER = 3;
    static final int FAR_ARM = 13;
    static final int FAR_LEG = 14;
    static final int TRUNK = 15;
    static final int HEAD = 16;
    static final int NEAR_LEG = 17;
    static final int HANDS = 19;
    static final int NEAR_ARM = 20;
    static final int FRONT = 22;
    static final int HELPING_HAND = 23;

    private Layer() {}
}
