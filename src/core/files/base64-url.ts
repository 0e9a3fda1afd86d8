/** Bytes in the alphabet of addresses (RFC 4648, section 5), without padding. */
export function base64UrlOf(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replace(/[+/=]/g, (mark) => (mark === '+' ? '-' : mark === '/' ? '_' : ''));
}

/** The bytes again; undefined where the text cannot be such bytes. */
export function bytesOfBase64Url(text: string): Uint8Array | undefined {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return undefined;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (character) => character.charCodeAt(0));
}
