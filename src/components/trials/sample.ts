import type { BoatProfile } from '../../core/trials/shapes.ts';

/** The shipped invented boat with its invented runs; undefined where it cannot be loaded. */
export async function sampleProfile(): Promise<BoatProfile | undefined> {
  try {
    const { readProfile } = await import('../../core/files/profile-file.ts');
    const text = (await import('../../../shared/trials-demo/sample-boat.json?raw')).default;
    const read = readProfile(text);
    return read.ok ? read.value : undefined;
  } catch {
    return undefined;
  }
}

/** The shipped invented tracks, as files of GPX text; empty where they cannot be loaded. */
export async function sampleTracks(): Promise<readonly { name: string; text: string }[]> {
  try {
    const [two, four] = await Promise.all([
      import('../../../shared/trials-demo/track-two-aboard.gpx?raw'),
      import('../../../shared/trials-demo/track-four-aboard.gpx?raw'),
    ]);
    return [
      { name: 'track-two-aboard.gpx', text: two.default },
      { name: 'track-four-aboard.gpx', text: four.default },
    ];
  } catch {
    return [];
  }
}
