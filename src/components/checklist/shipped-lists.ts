/** The lists that come with the project, each loaded when it is shown. */
export const shippedLists: Readonly<Record<string, () => Promise<{ default: unknown }>>> = {
  'before-launch': () => import('../../../shared/checklists/before-launch.json'),
  weather: () => import('../../../shared/checklists/weather.json'),
  'passage-plan': () => import('../../../shared/checklists/passage-plan.json'),
  'load-and-trim': () => import('../../../shared/checklists/load-and-trim.json'),
  'engine-and-propeller': () => import('../../../shared/checklists/engine-and-propeller.json'),
  fuel: () => import('../../../shared/checklists/fuel.json'),
  battery: () => import('../../../shared/checklists/battery.json'),
  'cold-water': () => import('../../../shared/checklists/cold-water.json'),
  'on-the-water': () => import('../../../shared/checklists/on-the-water.json'),
  'coming-home': () => import('../../../shared/checklists/coming-home.json'),
  overdue: () => import('../../../shared/checklists/overdue.json'),
};
