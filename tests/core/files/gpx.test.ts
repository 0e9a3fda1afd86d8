import { BaseBuilder, buildGPX, GarminBuilder } from 'gpx-builder';
import { describe, expect, it } from 'vitest';
import { type GpxFile, readGpx, readingGpx } from '../../../src/core/files/gpx.ts';
import { gpxOfRoute, gpxOfTracks } from '../../../src/core/files/gpx-writer.ts';
import type { Track, TrackNoteCode } from '../../../src/core/track/shapes.ts';
import type { Problem } from '../../../src/core/units/result.ts';
import { MORNING, recorded } from '../track/made-tracks.ts';

const NOW = MORNING + 86_400;
const sailed = recorded([{ seconds: 120, speed: 6, headingDeg: 80 }]);
/** As receivers write it. */
const trial: Track = {
  ...sailed,
  points: sailed.points.map(({ time, lat, lon }) => ({
    time,
    lat: Number(lat.toFixed(7)),
    lon: Number(lon.toFixed(7)),
  })),
};

/** GPX around the inside of one track's segment. */
function gpx(points: string, head = '<?xml version="1.0"?>'): string {
  return `${head}<gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>Trial</name><trkseg>${points}</trkseg></trk></gpx>`;
}

function point(seconds: number, lat: unknown = 46, lon: unknown = -32 + seconds * 1e-4): string {
  const time = new Date((MORNING + seconds) * 1000).toISOString();
  return `<trkpt lat="${lat}" lon="${lon}"><ele>0</ele><time>${time}</time></trkpt>\n`;
}

function read(text: string, now = NOW): GpxFile {
  const result = readGpx(text, now);
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.value;
}

function refused(text: string): Problem {
  const result = readGpx(text, NOW);
  if (result.ok) throw new Error('it was read');
  return result.problems[0]!;
}

function noted(text: string, code: TrackNoteCode, now = NOW) {
  return read(text, now).notes.find((note) => note.code === code);
}

describe('readGpx', () => {
  it('takes the words of a track name that somebody marked up, and reads the track', () => {
    const marked = gpx([0, 1, 2, 3].map((seconds) => point(seconds)).join('')).replace(
      '<name>Trial</name>',
      '<name>Trial <b><i>two</i></b></name>',
    );
    expect(read(marked).tracks[0]!.name).toBe('Trial two');
  });

  it('reads what a general GPX library wrote, point for point', () => {
    const { Point, Segment, Track } = BaseBuilder.MODELS;
    const points = trial.points.map(({ lat, lon, time }) => new Point(lat, lon, { time: new Date(time * 1000) }));
    const builder = new BaseBuilder();
    const segments = [new Segment(points.slice(0, 50)), new Segment(points.slice(50))];
    builder.setTracks([new Track(segments, { name: 'Out & <back>' }), new Track([new Segment(points)])]);
    const { tracks, notes } = read(buildGPX(builder.toObject()));
    expect(notes).toEqual([]);
    expect(tracks.map(({ name, breaks }) => ({ name, breaks }))).toEqual([
      { name: 'Out & <back>', breaks: [50] },
      { name: 'Track 2', breaks: [] },
    ]);
    for (const track of tracks) expect(track.points).toEqual(trial.points);
  });

  it('passes over heights and extensions', () => {
    const { Point } = GarminBuilder.MODELS;
    const builder = new GarminBuilder();
    builder.setSegmentPoints(
      trial.points.map(
        ({ lat, lon, time }) => new Point(lat, lon, { time: new Date(time * 1000), ele: 3, speed: 7, hr: 90 }),
      ),
    );
    expect(read(buildGPX(builder.toObject())).tracks[0]!.points).toEqual(trial.points);
  });

  it('reads GPX 1.0, prefixed names, times without a zone or with an offset, and CDATA', () => {
    const text = `<g:gpx version="1.0" xmlns:g="http://www.topografix.com/GPX/1/0"><g:trk><g:name><![CDATA[A & B]]></g:name>
      <g:trkseg><g:trkpt lat="46" lon="-32"><g:time>2026-07-01T09:00:00</g:time><g:speed>3</g:speed></g:trkpt>
      <g:trkpt lat="46.001" lon="-32"><g:time>2026-07-01T11:01:00.5+02:00</g:time></g:trkpt></g:trkseg></g:trk></g:gpx>`;
    expect(read(text).tracks).toEqual([
      {
        name: 'A & B',
        breaks: [],
        points: [
          { time: MORNING, lat: 46, lon: -32 },
          { time: MORNING + 60.5, lat: 46.001, lon: -32 },
        ],
      },
    ]);
  });

  it('tells how far it is, and can be left off', () => {
    const long = gpx(Array.from({ length: 20_000 }, (_, second) => point(second / 10)).join(''));
    const shares = [...readingGpx(long, NOW)];
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    const reading = readingGpx(long, NOW);
    expect(reading.next().done).toBe(false);
    expect(reading.return({ ok: false, problems: [] }).done).toBe(true);
  });

  it('leaves out points without a time or a place, says how many and where, and keeps the rest', () => {
    const bad = [
      '<trkpt lat="46" lon="-32"/>',
      '<trkpt lat="46" lon="-32"><time>yesterday</time></trkpt>',
      '<trkpt lat="46" lon="-32"><time>2026-02-31T09:61:00Z</time></trkpt>',
      point(5, 'NaN'),
      point(5, 91),
      point(5, 46, '1e300'),
      point(5, '0x10'),
      point(5).replace('lat="46"', ''),
    ];
    const text = gpx(`${point(0)}${bad.join('\n')}\n${point(10)}`);
    const { tracks, notes } = read(text);
    expect(tracks[0]!.points.map(({ time }) => time - MORNING)).toEqual([0, 10]);
    expect(notes.map(({ code, count, line }) => ({ code, count, line }))).toEqual([
      { code: 'no-time', count: 1, line: 2 },
      { code: 'bad-time', count: 2, line: 3 },
      { code: 'bad-place', count: 5, line: 5 },
    ]);
  });

  it('puts points in order of time, and takes each time once', () => {
    const { tracks, notes } = read(gpx([0, 2, 1, 3, 3, 2, 4].map((second) => point(second)).join('')));
    expect(tracks[0]!.points.map(({ time }) => time - MORNING)).toEqual([0, 1, 2, 3, 4]);
    expect(notes.map(({ code, count }) => ({ code, count }))).toEqual([
      { code: 'out-of-order', count: 2 },
      { code: 'repeated-time', count: 2 },
    ]);
  });

  it('says when a track lies in the future or lasts longer than 12 hours', () => {
    const day = gpx(`${point(0)}${point(13 * 3600, 46, -32)}`);
    expect(noted(day, 'future', MORNING)).toMatchObject({ count: 1, at: MORNING + 13 * 3600 });
    expect(noted(day, 'future')).toBeUndefined();
    expect(noted(day, 'long')).toMatchObject({ seconds: 13 * 3600 });
    expect(noted(gpx(point(0) + point(11 * 3600)), 'long')).toBeUndefined();
  });

  it('refuses a file in which nothing says when', () => {
    expect(refused(gpx('<trkpt lat="46" lon="-32"/>'.repeat(9))).code).toBe('no-times');
    expect(refused(gpx('')).code).toBe('no-tracks');
    expect(refused(gpxOfRoute('Round the island', [{ lat: 46, lon: -32 }])).message).toContain('routes');
  });

  it('keeps the timed track where another has no times', () => {
    const untimed = '<trk><name>Drawn</name><trkseg><trkpt lat="46" lon="-32"/></trkseg></trk>';
    const { tracks, notes } = read(gpx(point(0)).replace('</gpx>', `${untimed}</gpx>`));
    expect(tracks.map(({ name }) => name)).toEqual(['Trial']);
    expect(notes.map(({ code, track }) => ({ code, track }))).toContainEqual({ code: 'untimed-track', track: 'Drawn' });
  });

  it('keeps what came before the place where a file breaks off', () => {
    const whole = gpx([0, 1, 2, 3, 4].map((second) => point(second)).join(''));
    for (const cut of [whole.indexOf('</gpx>'), whole.lastIndexOf('<trkpt'), whole.lastIndexOf('<time>')]) {
      const { tracks, notes } = read(whole.slice(0, cut));
      expect(tracks[0]!.points.length).toBe(cut === whole.indexOf('</gpx>') ? 5 : 4);
      expect(notes[0]).toMatchObject({ code: 'broken-off', line: expect.any(Number) });
    }
  });

  it('says at which line something stops being GPX', () => {
    expect(refused('').code).toBe('empty');
    expect(refused('{"type": "FeatureCollection"}')).toMatchObject({ code: 'not-gpx', path: '' });
    expect(refused('<?xml version="1.0"?>\n\n<html><body/></html>').message).toMatch(/"html".*line 3/);
    expect(refused('<gpx>\n<trk>\n<trkseg></trk>').message).toContain('line 3');
    expect(refused('\u0000\u0001PK\u0003').code).toBe('not-gpx');
    expect(refused('<gpx><trk>&nbsp;</trk></gpx>').code).toBe('not-gpx');
  });

  it('expands no entities: a document type is refused, whatever it holds', () => {
    const lines = '<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;">';
    const text = gpx(point(0)).replace('Trial', '&c;');
    const head = `<?xml version="1.0"?><!DOCTYPE gpx [${lines}<!ENTITY f SYSTEM "file:///secret">]>`;
    expect(refused(text.replace('<?xml version="1.0"?>', head)).code).toBe('doctype');
    expect(refused(gpx(point(0), '<!DOCTYPE gpx>')).code).toBe('doctype');
  });

  it('takes a name as text, without control characters and not for ever', () => {
    const named = (name: string) => read(gpx(point(0)).replace('Trial', name)).tracks[0]!.name;
    expect(named('&lt;script&gt;alert(1)&lt;/script&gt;')).toBe('<script>alert(1)</script>');
    expect(named('  a\n\t b&#x202E;c ')).toBe('a b c');
    expect(named('x'.repeat(1e6)).length).toBe(100);
    expect(named('')).toBe('Track 1');
  });

  it('stops where elements stand thousands deep, and at 64 million characters', () => {
    expect(refused(`<gpx>${'<a>'.repeat(1e5)}`).message).toContain('deep');
    expect(refused(' '.repeat(64e6 + 1))).toMatchObject({ code: 'too-big', limit: 64e6 });
  });

  it('reads twelve hours, 100,000 points', () => {
    const every = (12 * 3600) / 100_000;
    const text = gpx(Array.from({ length: 100_000 }, (_, at) => point(at * every, 46, -32 + at * 1e-6)).join(''));
    const { tracks, notes } = read(text);
    expect(notes).toEqual([]);
    expect(tracks[0]!.points.length).toBe(100_000);
  });
});

describe('gpxOfTracks', () => {
  it('writes what reads back as the same tracks', () => {
    const tracks = [{ ...trial, name: `5 < 6 & "quoted" 'so' ]]>`, breaks: [40, 90] }, trial];
    expect(read(gpxOfTracks(tracks))).toEqual({ tracks, notes: [] });
  });

  it('leaves out characters that XML cannot hold', () => {
    expect(read(gpxOfTracks([{ ...trial, name: 'a\u0000b\ud800c' }])).tracks[0]!.name).toBe('abc');
  });
});

describe('gpxOfRoute', () => {
  it('names its points and escapes what a name holds', () => {
    const text = gpxOfRoute('Out <1>', [
      { lat: 46, lon: -32, name: 'Ness & cove' },
      { lat: 1e-8, lon: -1e-12 },
    ]);
    expect(text).toContain('<name>Out &lt;1&gt;</name>');
    expect(text).toContain('<rtept lat="46" lon="-32"><name>Ness &amp; cove</name></rtept>');
    expect(text).toContain('<rtept lat="0.00000001" lon="0"/>');
  });
});
