package midplate.column;

/** Bands that were worked out for every case; the arrays are not to be changed. */
final class DrawnBands implements Bands {
    private final double[][] start;
    private final double[][] middle;
    private final double[][] end;

    /** So many, to be filled in: by spot, then by case. */
    DrawnBands(int spots, int cases) {
        this.start = new double[spots][cases];
        this.middle = new double[spots][cases];
        this.end = new double[spots][cases];
    }

    void put(int spot, int oneCase, double startMl, double middleMl, double endMl) {
        start[spot][oneCase] = startMl;
        middle[spot][oneCase] = middleMl;
        end[spot][oneCase] = endMl;
    }

    @Override
    public int cases() {
        return start[0].length;
    }

    @Override
    public double startMl(int spot, int oneCase) {
        return start[spot][oneCase];
    }

    @Override
    public double middleMl(int spot, int oneCase) {
        return middle[spot][oneCase];
    }

    @Override
    public double endMl(int spot, int oneCase) {
        return end[spot][oneCase];
    }
}
