package org.hearthway.figure.engine;

/** A leg: its joints and the frames of its segments. */
record Leg(Side side, Vec hip, Vec knee, Vec ankle, Frame thigh, Frame shank, Frame foot, Frame toes, double sole) {

    static Leg of(Pose pose, Proportions size, Side side, Frame pelvis, Vec middle) {
        int m = side.sign;
        var hip = pelvis.from(middle, 0, 0, m * size.hips());
        var thigh = pelvis.sag(-pose.get(side, Joint.HIP))
                .abd(m * pose.get(side, Joint.HIP_ABD))
                .rot(m * pose.get(side, Joint.HIP_ROT));
        var knee = thigh.from(hip, 0, -size.thigh(), 0);
        var shank = thigh.sag(pose.get(side, Joint.KNEE));
        var ankle = shank.from(knee, 0, -size.shank(), 0);
        var foot = shank.sag(-pose.get(side, Joint.ANKLE));
        var toes = foot.sag(-pose.get(side, Joint.TOES));
        return new Leg(side, hip, knee, ankle, thigh, shank, foot, toes, size.ankle());
    }

    Vec heel() {
        return foot.from(ankle, -.030, -(sole - .0195), 0);
    }

    Vec ball() {
        return foot.from(ankle, .074, -(sole - .0145), 0);
    }

    /** Of the toes' middle. */
    Vec toe() {
        return toes.from(ball(), .034, -.0035, 0);
    }

    Vec instep() {
        return foot.from(ankle, .045, -.010, 0);
    }

    Vec calf() {
        return knee.toward(ankle, .30).plus(shank.f().times(-.008));
    }

    /** The kneecap's middle. */
    Vec kneecap() {
        return shank.from(knee, .006, 0, 0);
    }
}
