package org.hearthway.figure.engine;

import java.util.function.UnaryOperator;

/** A small damped least squares (Levenberg 1944, Marquardt 1963; from memory) with forward differences. */
final class LeastSquares {

    private static final int ROUNDS = 60;
    private static final double STEP = 1e-5;
    private static final double LONGEST = .5;
    private static final double ENOUGH = 1e-12;

    private LeastSquares() {}

    /** Unknowns that make the sum of squares of the residuals small; the same for the same input, always. */
    static double[] solve(double[] begin, UnaryOperator<double[]> residuals) {
        var x = begin.clone();
        var r = residuals.apply(x);
        double cost = squares(r);
        double damping = 1e-3;
        for (int round = 0; round < ROUNDS && cost > ENOUGH; round++) {
            var jacobian = jacobian(x, r, residuals);
            boolean better = false;
            for (int attempt = 0; attempt < 8 && !better; attempt++) {
                var step = step(jacobian, r, damping);
                var candidate = x.clone();
                for (int i = 0; i < x.length; i++) {
                    candidate[i] += Math.max(-LONGEST, Math.min(LONGEST, step[i]));
                }
                var after = residuals.apply(candidate);
                double then = squares(after);
                if (then < cost) {
                    better = true;
                    boolean settled = cost - then < 1e-9 * cost;
                    x = candidate;
                    r = after;
                    cost = then;
                    damping = Math.max(1e-9, damping / 4);
                    if (settled) {
                        return x;
                    }
                } else {
                    damping *= 6;
                }
            }
            if (!better) {
                return x;
            }
        }
        return x;
    }

    private static double squares(double[] r) {
        double sum = 0;
        for (double v : r) {
            sum += v * v;
        }
        return sum;
    }

    private static double[][] jacobian(double[] x, double[] r, UnaryOperator<double[]> residuals) {
        var columns = new double[x.length][];
        for (int j = 0; j < x.length; j++) {
            var moved = x.clone();
            moved[j] += STEP;
            var after = residuals.apply(moved);
            for (int i = 0; i < r.length; i++) {
                after[i] = (after[i] - r[i]) / STEP;
            }
            columns[j] = after;
        }
        return columns;
    }

    private static double[] step(double[][] columns, double[] r, double damping) {
        int n = columns.length;
        var a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                a[i][j] = dot(columns[i], columns[j]);
            }
            a[i][n] = -dot(columns[i], r);
        }
        for (int i = 0; i < n; i++) {
            a[i][i] += damping * (a[i][i] + 1e-6);
        }
        return eliminated(a);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** The matrix is symmetric and positive, so no row needs to change places. */
    private static double[] eliminated(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double by = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= by * a[k][j];
                }
            }
        }
        var x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }
}
