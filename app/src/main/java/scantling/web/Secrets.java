package scantling.web;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Random words that nobody can guess, and stamps that only this shop's server can make. */
final class Secrets {
    /** Letters and digits that are not taken for one another when read aloud or typed with gloves. */
    private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private static final String HMAC = "HmacSHA256";

    private final SecureRandom random = new SecureRandom();
    private final byte[] key;

    /** @param key that stamps are made with */
    Secrets(byte[] key) {
        this.key = key.clone();
    }

    /** A code of so many characters, about five bits each. */
    String code(int length) {
        StringBuilder code = new StringBuilder();
        random.ints(length, 0, ALPHABET.length()).forEach(i -> code.append(ALPHABET.charAt(i)));
        return code.toString();
    }

    /** The stamp that pages for a visitor carry and that comes back with everything they send. */
    String stamp(String visitor) {
        try {
            Mac mac = Mac.getInstance(HMAC);
            mac.init(new SecretKeySpec(key, HMAC));
            return Base64.getUrlEncoder()
                    .withoutPadding()
                    .encodeToString(mac.doFinal(visitor.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("Every Java runtime has " + HMAC + ".", missing);
        }
    }

    /** Whether two texts are the same, in a time that does not tell where they differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
