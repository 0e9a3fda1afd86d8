/**
 * Text of a file: UTF-8 or UTF-16 by its byte order mark, else as its XML declaration says, else UTF-8, and where that
 * does not decode, Windows-1252, as spreadsheets of many systems write it.
 */
export function textOfBytes(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decoded(bytes, 'utf-16le');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decoded(bytes, 'utf-16be');
  const declared = /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*?encoding\s*=\s*["']([\w.:-]{1,40})["']/.exec(
    String.fromCharCode(...bytes.subarray(0, 200)),
  )?.[1];
  for (const name of [declared, 'utf-8']) {
    if (name === undefined) continue;
    try {
      return new TextDecoder(name, { fatal: true }).decode(bytes);
    } catch {
      // Not that encoding, or none known here: the next.
    }
  }
  return decoded(bytes, 'windows-1252');
}

function decoded(bytes: Uint8Array, name: string): string {
  return new TextDecoder(name).decode(bytes);
}
