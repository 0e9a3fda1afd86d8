import type { WatersFile } from '../../core/route/shapes.ts';

/** Name of the invented waters that come with the widget. */
export const SHIPPED_WATERS = 'haven';

/** Tests read them through the door of local waters, so that nobody's device has to. */
export async function shippedWaters(): Promise<WatersFile> {
  return JSON.parse((await import('../../../shared/waters/haven.geojson?raw')).default);
}

/** Local waters by name or address; undefined where they cannot be loaded or read. */
export async function fetchWaters(name: string): Promise<WatersFile | undefined> {
  try {
    if (name === SHIPPED_WATERS) return await shippedWaters();
    const value: unknown = await (await fetch(name)).json();
    const { readWaters } = await import('../../core/files/waters-file.ts');
    const read = readWaters(value);
    return read.ok ? read.value : undefined;
  } catch {
    return undefined;
  }
}
