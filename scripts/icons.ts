/** npm run icons: draws the icons of the installed site and the picture that links to it show, from the mark of the site. */
import { mkdirSync, readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';

const mark = readFileSync('public/favicon.svg', 'utf8');
/** Without its rounded plate: systems cut a shape of their own, and the mark stays clear of the edges. */
const bare = mark
  .replace(/<rect[^>]*>/, '<rect width="32" height="32" fill="#0b6a66"/>')
  .replace('viewBox="0 0 32 32"', 'viewBox="-6 -6 44 44"')
  .replace('<rect width="32" height="32"', '<rect x="-6" y="-6" width="44" height="44"');

const preview = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1200 630">
  <rect width="1200" height="630" fill="#f7f4ec"/>
  <defs>
    <pattern id="kept" width="18" height="18" patternUnits="userSpaceOnUse" patternTransform="rotate(35)">
      <rect width="18" height="18" fill="#fffdf7"/><rect width="5" height="18" fill="#8a5a00"/>
    </pattern>
  </defs>
  <g font-family="Georgia, 'DejaVu Serif', serif" font-weight="600" fill="#15302f">
    <text x="90" y="150" font-size="64">Homeleg</text>
    <text x="90" y="262" font-size="46">There and back, with something left?</text>
  </g>
  <rect x="90" y="330" width="1020" height="120" rx="26" fill="#fffdf7" stroke="#15302f" stroke-width="5"/>
  <path d="M102 362a20 20 0 0 1 20-20h350v96H122a20 20 0 0 1-20-20z" fill="#0b6a66"/>
  <rect x="478" y="342" width="296" height="96" fill="#5f9a94"/>
  <path d="M780 342h298a20 20 0 0 1 20 20v56a20 20 0 0 1-20 20H780z" fill="url(#kept)"/>
  <g font-family="'DejaVu Sans', sans-serif" font-size="32" fill="#15302f">
    <text x="102" y="502">Way out</text><text x="478" y="502">Way home</text><text x="780" y="502">Kept</text>
    <text x="90" y="580" font-size="28" fill="#4c6361">Trips of small power boats. For planning ashore, not for navigation.</text>
  </g>
</svg>`;

const drawings = [
  { file: 'public/icons/180.png', svg: bare, width: 180, height: 180 },
  { file: 'public/icons/192.png', svg: mark, width: 192, height: 192 },
  { file: 'public/icons/512.png', svg: mark, width: 512, height: 512 },
  { file: 'public/icons/512-maskable.png', svg: bare, width: 512, height: 512 },
  { file: 'public/preview.png', svg: preview, width: 1200, height: 630 },
];

mkdirSync('public/icons', { recursive: true });
const browser = await chromium.launch({
  executablePath: process.env.HOMELEG_BROWSER || '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
for (const { file, svg, width, height } of drawings) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.setContent(`<style>*{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
  await page.screenshot({ path: file, omitBackground: true });
  await page.close();
  console.log(`Drawn: ${file}`);
}
await browser.close();
