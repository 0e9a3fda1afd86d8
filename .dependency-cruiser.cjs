/** Dependencies point one way: pages -> components -> core; inside core as DEVELOPERS.md draws it. */
const below = {
  units: [],
  craft: ['units'],
  hull: ['units', 'craft'],
  drive: ['units', 'craft'],
  load: ['units', 'craft'],
  water: ['units', 'craft'],
  route: ['units', 'craft', 'water'],
  curve: ['units', 'craft', 'hull', 'drive', 'load', 'water', 'route'],
  track: ['units', 'water', 'route'],
  trials: ['units', 'craft', 'hull', 'drive', 'load', 'water', 'route', 'curve', 'track'],
  trip: ['units', 'craft', 'hull', 'drive', 'load', 'water', 'route', 'curve', 'trials'],
  hire: ['units', 'craft', 'load', 'water', 'route', 'curve', 'trials', 'trip', 'files'],
  compare: ['units', 'craft', 'hull', 'drive', 'load', 'water', 'route', 'curve', 'track', 'trials', 'trip'],
};

const coreRules = Object.entries(below).map(([folder, allowed]) => ({
  name: `core-${folder}`,
  comment: `core/${folder} may only build on: ${allowed.join(', ') || 'nothing'}`,
  severity: 'error',
  from: { path: `^src/core/${folder}/` },
  to: { path: '^src/core/', pathNot: `^src/core/(${[folder, ...allowed].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...coreRules,
    {
      name: 'files-know-no-method',
      severity: 'error',
      from: { path: '^src/core/files/' },
      to: { path: '^src/core/', pathNot: '^src/core/(files|units)/|/shapes\\.ts$' },
    },
    {
      name: 'core-is-the-bottom',
      severity: 'error',
      from: { path: '^src/core/' },
      to: { path: '^src/(components|languages|pages|layouts|content)/|^node_modules/(lit|leaflet|astro)' },
    },
    {
      name: 'components-know-no-page',
      severity: 'error',
      from: { path: '^src/components/' },
      to: { path: '^src/(pages|layouts|content)/|^node_modules/astro' },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'nothing-unresolved',
      severity: 'error',
      from: { path: '^src/' },
      to: { couldNotResolve: true, pathNot: '^astro:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'browser', 'default'] },
  },
};
