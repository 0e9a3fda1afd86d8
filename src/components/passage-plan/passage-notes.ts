import { putBy } from '../store/put-by.ts';

/** What only the people know: kept on this device, put on paper or sent only as they tick. */
export interface PassageNotes {
  readonly who: string;
  readonly marks: string;
  readonly reach: string;
  readonly contact: string;
  readonly rescue: string;
  readonly vehicle: string;
  readonly gear: string;
  /** Later than planned before they count as late, min. */
  readonly margin: number;
  readonly onPaper: boolean;
  readonly inMessages: boolean;
}

export const NOTE_FIELDS = ['who', 'marks', 'reach', 'contact', 'rescue', 'vehicle', 'gear'] as const;
export type NoteField = (typeof NOTE_FIELDS)[number];
export const MARGINS = [0, 15, 30, 60] as const;

export const NO_NOTES: PassageNotes = {
  who: '',
  marks: '',
  reach: '',
  contact: '',
  rescue: '',
  vehicle: '',
  gear: '',
  margin: 15,
  onPaper: true,
  inMessages: false,
};

const KEY = 'homeleg-passage';
/** Characters of a field. */
export const LONGEST_NOTE = 600;

/** What the device kept; empty where there is nothing or it cannot be read. */
export function keptNotes(): PassageNotes {
  const text = keptText();
  if (text === null) return NO_NOTES;
  const kept = parsed(text);
  if (!kept) {
    putBy(KEY, text);
    return NO_NOTES;
  }
  const texts = NOTE_FIELDS.map((field) => {
    const text = kept[field];
    return [field, typeof text === 'string' ? text.slice(0, LONGEST_NOTE) : ''] as const;
  });
  return {
    ...NO_NOTES,
    ...Object.fromEntries(texts),
    margin: MARGINS.find((minutes) => minutes === kept.margin) ?? NO_NOTES.margin,
    onPaper: kept.onPaper !== false,
    // Ticked anew each time: what went to one need not go to the next.
    inMessages: false,
  };
}

/** Whether the device holds notes that cannot be read. */
export function notesUnread(): boolean {
  const text = keptText();
  return text !== null && !parsed(text);
}

function keptText(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function parsed(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

/** False where the browser keeps nothing. */
export function keepNotes(notes: PassageNotes): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(notes));
    return true;
  } catch {
    return false;
  }
}

/** The same without anything typed. */
export function withoutTyped(notes: PassageNotes): PassageNotes {
  return { ...NO_NOTES, margin: notes.margin, onPaper: notes.onPaper, inMessages: notes.inMessages };
}
