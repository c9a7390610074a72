package slackwater.simulator.bench;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over (time, controller, output, level) of every pin change, in that order: the same run has the same digest. */
final class Digest {
    private static final int RECORD_BYTES = Long.BYTES + 2 * Integer.BYTES + 1;

    private final MessageDigest sha256;
    private final ByteBuffer entry = ByteBuffer.allocate(RECORD_BYTES);

    Digest() {
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (final NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }

    private Digest(final MessageDigest sha256) {
        this.sha256 = sha256;
    }

    void add(final long atNs, final int controller, final int output, final boolean isHigh) {
        entry.clear();
        entry.putLong(atNs).putInt(controller).putInt(output).put((byte) (isHigh ? 1 : 0));
        sha256.update(entry.array());
    }

    String hex() {
        return HexFormat.of().formatHex(cloned().digest());
    }

    Digest copy() {
        return new Digest(cloned());
    }

    private MessageDigest cloned() {
        try {
            return (MessageDigest) sha256.clone();
        } catch (final CloneNotSupportedException impossible) {
            throw new IllegalStateException("the platform's SHA-256 can be cloned", impossible);
        }
    }
}
