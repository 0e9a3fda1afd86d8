/** The pages named at the top of every page; their names are texts of the site. */
export const places = [
  '/',
  '/trials/',
  '/engines/',
  '/suit/',
  '/hire/',
  '/waters/',
  '/checklists/',
  '/method/',
] as const;
