import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * SHA-256, lower-case hexadecimal, over the RFC 8785 form of a record without its `digest`: the same record gives
 * the same digest whatever the order of its keys or the program that wrote it. Without Node's own library, since the
 * client's page computes the same digest.
 */
export function digestOfRecord(record: object): string {
  const { digest: _, ...rest } = record as { digest?: unknown };
  const canonical = canonicalize(rest);
  if (canonical === undefined) throw new Error('an empty record has no digest');
  return bytesToHex(sha256(utf8ToBytes(canonical)));
}

/** The digest's beginning in groups of four, for people to compare on paper: `3f9a 02c4 71be`. */
export function shortDigest(digest: string): string {
  return (digest.slice(0, 12).match(/.{4}/g) ?? []).join(' ');
}
