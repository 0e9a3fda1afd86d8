import { describe, expect, it } from 'vitest';
import { base64UrlOf, bytesOfBase64Url } from '../../../src/core/files/base64-url.ts';
import { crc32 } from '../../../src/core/files/crc32.ts';
import { daysIn, describesDay, describesTime } from '../../../src/core/files/iso-time.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('crc32', () => {
  it('is CBF43926 of the digits 1 to 9, as every list of check sums has it, and nothing of nothing', () => {
    expect(crc32(bytes('123456789'))).toBe(0xcbf43926);
    expect(crc32(bytes(''))).toBe(0);
  });
});

describe('base64 for addresses', () => {
  it('writes the examples of RFC 4648 without padding', () => {
    expect(['f', 'fo', 'foo', 'foob'].map((text) => base64UrlOf(bytes(text)))).toEqual(['Zg', 'Zm8', 'Zm9v', 'Zm9vYg']);
    expect(base64UrlOf(Uint8Array.of(0xfb, 0xff, 0xbf))).toBe('-_-_');
  });

  it('reads them again, and refuses what cannot be bytes', () => {
    expect(bytesOfBase64Url('-_-_')).toEqual(Uint8Array.of(0xfb, 0xff, 0xbf));
    expect(bytesOfBase64Url('Zm9vYg')).toEqual(bytes('foob'));
    expect(bytesOfBase64Url('')).toEqual(new Uint8Array());
    for (const text of ['Z', 'Zm9vY', 'Zm9+', 'Zg==', 'Zm 8']) expect(bytesOfBase64Url(text)).toBeUndefined();
  });
});

describe('days of the calendar', () => {
  it('has 29 February every fourth year, not in 1900, but in 2000', () => {
    expect([2023, 2024, 1900, 2000].map((year) => daysIn(2, year))).toEqual([28, 29, 28, 29]);
    expect([1, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((month) => daysIn(month, 2025))).toEqual([
      31, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
    ]);
  });

  it('takes the first and last day of a month and none beyond', () => {
    for (const day of ['2025-01-01', '2025-12-31', '2025-04-30', '2024-02-29']) expect(describesDay(day)).toBe(true);
    for (const day of ['2025-00-10', '2025-13-10', '2025-01-00', '2025-04-31', '2023-02-29', '25-01-01', '2025-1-1']) {
      expect(describesDay(day)).toBe(false);
    }
  });

  it('takes times with an offset, up to a minute before midnight', () => {
    for (const time of ['2025-07-15T00:00Z', '2025-07-15T23:59:59.5+02:00', '2025-07-15T12:30-14:00']) {
      expect(describesTime(time)).toBe(true);
    }
    for (const time of ['2025-07-15T24:00Z', '2025-07-15T12:60Z', '2025-07-15T12:30', '2025-07-15T12:30+15:00']) {
      expect(describesTime(time)).toBe(false);
    }
  });
});
