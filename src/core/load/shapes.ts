import type { Position } from '../craft/shapes.ts';

/** Somebody or something aboard. Without station and place its seat is unknown. */
export interface Aboard {
  readonly id: string;
  readonly kind: 'adult' | 'child' | 'dog' | 'gear';
  readonly name?: string;
  /** kg, clothed and with what they carry */
  readonly mass: number;
  /** Id of a station of the hull. */
  readonly station?: string;
  /** A free spot; goes before `station`. */
  readonly at?: Position;
  readonly helm?: boolean;
}

export interface Load {
  readonly items: readonly Aboard[];
  /** Share of the tanks' capacity or the batteries' charge, 0 to 1, at departure. Absent: unknown. */
  readonly fill?: number;
  /** How the fill is known: dipstick, scales or a battery monitor against a float gauge or a glance. */
  readonly fillKnownBy?: 'measured' | 'gauge';
}
