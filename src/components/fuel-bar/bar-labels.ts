import type { BarTexts } from './bar-texts.ts';
import { type Placed, placeLabels, textWidth } from './labels.ts';
import type { BarPicture } from './picture.ts';

/** Texts on and under the bar. */
export interface BarLabels {
  /** Parts of the trip in row 0, the band and perhaps the reserve in the rows below it. */
  readonly under: readonly Placed[];
  /** The reserve's name stands on the part of it that is still whole, where it has room there. */
  readonly onReserve: Placed | undefined;
}

/** What has no room is left out; the legend has every figure. */
export function barLabels(picture: BarPicture, texts: BarTexts, width: number, fontSize: number): BarLabels {
  const weights = { short: 3, left: 3, home: 2, out: 1, reserve: 1 };
  const wide = (text: string) => textWidth(text, fontSize);
  const parts = picture.spans.map((span) => ({
    key: span.kind,
    text: texts.spans[span.kind],
    x: (span.from + span.to) / 2,
    width: wide(texts.spans[span.kind]),
    weight: weights[span.kind],
  }));
  const reserve = parts.find((part) => part.key === 'reserve');
  const { free, band } = picture;
  const onReserve =
    reserve && free.to - free.from >= reserve.width + 24
      ? { ...reserve, left: (free.from + free.to - reserve.width) / 2, row: 0 }
      : undefined;
  const first = placeLabels(
    parts.filter((part) => part.key !== 'reserve'),
    width,
    1,
  );
  const likely = {
    key: 'likely',
    text: texts.likely,
    x: (band.from + band.to) / 2,
    width: wide(texts.likely),
    weight: 2,
  };
  const below = [likely, ...(reserve && !onReserve ? [reserve] : [])].filter((label) => label.text);
  const second = placeLabels(below, width, 2).map((label) => ({ ...label, row: label.row + 1 }));
  return { under: [...first, ...second], onReserve };
}

/** Texts of the scale above the bar: both ends first, then what fits between. */
export function tickLabels(picture: BarPicture, texts: BarTexts, width: number, fontSize: number): readonly Placed[] {
  const last = texts.ticks.length - 1;
  const placed = placeLabels(
    texts.ticks.map(({ value, text }, i) => ({
      key: String(i),
      text,
      x: picture.at(value),
      width: textWidth(text, fontSize),
      weight: Number(i === 0 || i === last),
    })),
    width,
    1,
  );
  // A figure pushed away from its tick would tell a lie.
  return placed.filter(({ key, left, width: wide }) => {
    const x = picture.at(texts.ticks[Number(key)]!.value);
    return x >= left - 1 && x <= left + wide + 1;
  });
}
