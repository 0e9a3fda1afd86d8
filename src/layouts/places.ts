/** The pages named at the top of every page. */
export const places = [
  { path: '/', name: 'Planner' },
  { path: '/trials/', name: 'Trials' },
  { path: '/engines/', name: 'Engines' },
  { path: '/suit/', name: 'What suits' },
  { path: '/hire/', name: 'Hire desk' },
  { path: '/checklists/', name: 'Checklists' },
  { path: '/method/', name: 'Method' },
] as const;
