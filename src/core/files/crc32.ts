/** Check sum of bytes as of ISO 3309 and RFC 1952: polynomial 0xEDB88320, reflected. */
export function crc32(bytes: Uint8Array): number {
  let sum = ~0;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}
