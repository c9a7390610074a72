package slackwater.simulator.junit;

/** What a bench can tell about a test that failed on it; rides along with the failure, so that every reporter shows it. */
final class BenchStory extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BenchStory(final String text) {
        super(text, null, false, false); // where this was made says nothing to the reader: no stack trace
    }
}
