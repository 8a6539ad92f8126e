package org.slatwright.exporter.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/** SHA-256, which every Java has. */
final class Digest {

  private Digest() {}

  /** As a content security policy names a script or a style (CSP 3, "hash-source"). */
  static String source(String text) {
    return "'sha256-" + Base64.getEncoder().encodeToString(of(text)) + "'";
  }

  /** In hexadecimal digits. */
  static String hex(String text) {
    return HexFormat.of().formatHex(of(text));
  }

  private static byte[] of(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
