/** What the pages of the site say in English, some of it with marks of HTML. Links are those of the English pages. */
export const siteTexts = {
  language: 'Language',
  skip: 'Skip to the content',
  pages: 'Pages',
  places: {
    '/': 'Planner',
    '/trials/': 'Trials',
    '/engines/': 'Engines',
    '/suit/': 'What suits',
    '/hire/': 'Hire desk',
    '/waters/': 'Waters',
    '/checklists/': 'Checklists',
    '/method/': 'Method',
    '/search/': 'Search',
  },
  foot: {
    caution:
      '<strong>For planning ashore, not for navigation.</strong> The boat’s plate and manual, local rules and the practice you are licensed or trained for come first. The skipper decides.',
    model:
      'Homeleg reckons with models. A boat that nobody has measured can differ from them a lot, so the answers carry a band.',
    kept: 'What you type stays on this device. Boats, engines and waters that come with the site are invented.',
    method: '<a href="/method/">How the answer is worked out</a>, and where it falls short.',
    embed: '<a href="/embed/">Put it on your own site</a>, and <a href="/gallery/">pages that carry it</a>.',
  },
  previewAlt: 'A bar from full to empty: the way out, the way home, and the part that is kept',
  search: {
    title: 'Search',
    description:
      'Find a point of a checklist or a passage of the method page. The search runs on this device, offline too.',
    site: 'Site',
    label: 'Search these pages',
    words: 'Words to look for',
    button: 'Search',
    hint: 'Runs on this device, offline too; nothing you type leaves it.',
    noScript: 'Searching needs JavaScript. Everything is in these pages:',
    all: 'All pages',
  },
  home: {
    description:
      'With this boat, this load and this tank: will we get there and back with something left? A trip planner for small open power boats, petrol or electric.',
    heading: 'There and back, with something left?',
    lead: 'Say what the boat is, who comes along and how much is in the tank or battery. Homeleg works out whether the trip fits, how sure that is, and what to change if it does not.',
    loading:
      'The planner is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    reading: 'How to read the answer',
    bar: [
      ['Way out', 'With the load, the seats, the wind and the stream you gave.'],
      ['Way home', 'Lighter by the fuel burnt, in whatever wind and stream there is by then.'],
      ['Kept', 'A third, or more if you choose. The plan may not touch it.'],
    ],
    answers: 'Three answers',
    measure:
      'A boat that nobody has measured gets a wide band, and needs more in the tank for the first answer. Three runs with a watch and a fuel gauge narrow it. <a href="/trials/">Measure your boat</a>.',
    also: [
      [
        'Checklists',
        'From the <a href="/checklists/weather/">weather</a> over <a href="/checklists/before-launch/">before launch</a> to <a href="/checklists/overdue/">overdue</a>, for the person ashore. <a href="/checklists/">All lists</a> can be ticked on the phone or printed.',
      ],
      [
        'Hire desk',
        'Two weights and a fuel gauge: <a href="/hire/">a reserve check to hand over</a>, with the time to be back.',
      ],
      [
        'Method',
        '<a href="/method/">What is worked out and how</a>, from which publications, and where it falls short.',
      ],
      [
        'Without a network',
        'After the first visit all pages work offline, and the browser’s menu can install them like an app. Only pictures of the street map are never kept on the device.',
      ],
    ],
  },
  engines: {
    title: 'Loads and engines',
    description:
      'One boat, crews of one to four, several engines, propellers, tanks and batteries: who planes, how fast, how thirsty, how far, and what is still to spare.',
    heading: 'Loads and engines',
    lead: 'One boat with crews of one to four against the engines, propellers, tanks and batteries you have in mind: does it plane, how fast, how thirsty, how far, and what may still come aboard.',
    loading:
      'The table is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    reading: 'How to read it',
    paragraphs: [
      'Every figure stands for boats like this one; in brackets is what eight of ten of them lie between. A boat that somebody has measured gets a narrower band: open its file above the table. The plate on the boat comes before any figure here.',
      'You are looking for a boat and not for an engine? <a href="/suit/">Say what it is for</a>, and see which would suit.',
    ],
  },
  suit: {
    title: 'What would suit',
    description:
      'Say who comes along, how far, on what water and how fast, and see which boat, engine, propeller and tank or battery would do, and why the others fall out.',
    heading: 'What would suit?',
    lead: 'Say who comes along, how far you want to go, how fast and on what water. Every example boat is tried with every engine, tank and battery; what does not do says why.',
    loading:
      'The search is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    asks: 'What it asks of a boat',
    points: [
      'The plate is kept: people, weight, power and weight of the engine.',
      'The speed wished is held with everybody aboard, and the boat gets over the hump to it.',
      'There and back with a third kept, and home with something left even on a bad day.',
      'What has to be carried can be carried.',
    ],
    start:
      'Take it as a start. <a href="/engines/">Set engines against loads</a> on the boat you have in mind, and try one before you buy or hire it.',
  },
  trials: {
    title: 'Trials',
    description:
      'Measure your boat: trial runs typed in or read from a track, the consumption curve they make, how sure it is, and a boat profile for the planner.',
    heading: 'Measure your boat',
    lead: 'Type what the log, the flow meter or the ammeter said, or open a track. Each run narrows the band of the consumption curve; the result is a boat profile that the planner works with.',
    loading:
      'The trials page is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    how: 'How a run is made',
    points: [
      'One throttle setting, held until the speed is steady, then a minute or more on a straight line.',
      'Then the same the other way, so that the stream cancels. Four passes are better than two.',
      'Nobody changes seat. Note who sits where, and what is in the tank.',
      'Slow, on the hump and planing: a curve is known where it was tried, and guessed elsewhere.',
      'Change the load at least once in a day.',
    ],
    lookout:
      'A lookout besides the one who notes, kill cord on, away from bathers, moorings and other boats; speed limits hold for trials too.',
  },
  hire: {
    title: 'Hire desk',
    description:
      'A hire desk in the browser: set the morning once, check each hire in six answers, hand over a slip with a code, and see who is out and who is late.',
    heading: 'Hire desk',
    lead: 'Set the morning once. Check each hire in six answers, hand over a slip, and see who is out and who is late. Everything stays in this browser and works without a network.',
    loading:
      'The hire desk is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    sections: [
      [
        'What it does, and what it does not',
        'The answer comes from the same calculation as that of the <a href="/">planner</a>. It can be a plain go only while somebody answers for the fleet, the morning is set and in date, the plate has been read and how full the boat is has been measured. Engine failure, a turn of the weather and what the hirer does are not in the figures.',
        'Hire rules, codes of practice and insurance say what has to be shown, written down and signed where you are. They come before this page. A closed page cannot warn of a boat that is late: keep it open, and a clock beside it.',
      ],
      [
        'What the desk keeps',
        'Nothing leaves this computer. Names are not needed. Fleet, morning, hires and refills are kept in this browser; they can be saved as one file, loaded on another computer, and cleared.',
      ],
      [
        'A fleet of your own',
        'Boats can be typed, or come in a file: who answers for them, since when and until when; each boat with its plate, the speed it is hired out for, and either figures of a boat like it, its own figures, or the profile from its <a href="/trials/">trials</a>. Save the invented fleet as a file to see how one is written. Refills noted at the return count as evidence of what that boat uses.',
      ],
    ],
  },
  waters: {
    title: 'Local waters',
    description:
      'Draw and check a file of local waters: land, shoals, speed limits, keep-out areas, landings, stream places and set routes. And check a fleet file.',
    heading: 'Draw your local waters',
    lead: 'Land, shoals, speed limits, keep-out areas, landings, streams and set routes of your own place, on a map or in tables. Errors are shown with their place in the file, and what looks odd is pointed out.',
    loading:
      'The page for local waters is loading. It works in the browser and needs JavaScript; the <a href="/checklists/">checklists</a> work without.',
    fleet: 'A fleet file',
    fleetLead:
      'Boats, set routes and dates of a hire desk, checked by the same reader as at the desk. Nothing typed here is kept until you save the file; the desk keeps its own.',
    sections: [
      [
        'What these waters are, and what they are not',
        'A file of local waters tells the <a href="/">planner</a> where land, depth and rules stand in the way. It is no chart. Whoever draws it answers for it: take it from charts and notices that are in force, look at it on the water, and say until when it holds. After that day no trip in it is more than “not sure enough”.',
        'Inside the box, what is not drawn as land counts as water, deep enough and open to all. So draw the whole shore inside the box, or make the box smaller.',
      ],
      [
        'The file',
        'It is plain GeoJSON (RFC 7946): degrees of WGS 84, longitude first. Each feature has a <code>kind</code> and a <code>name</code>; members and properties that are not known here stay as they are. <code>responsible</code>, <code>surveyed</code> and <code>validUntil</code> stand beside <code>features</code>. Another site puts the file where its widget finds it: <code>&lt;homeleg-planner waters="/our-bay.geojson"&gt;</code>.',
      ],
    ],
    schemas: 'Schemas for editors and programs',
    schemasLead: 'JSON Schema, draft 2020-12, made from what the readers of this site check:',
    schemaList: [
      ['trip', 'a trip'],
      ['profile', 'a measured boat'],
      ['waters', 'local waters'],
      ['fleet', 'the fleet of a hire desk'],
      ['saved', 'saved trips and boats'],
      ['desk', 'all that a hire desk kept'],
    ],
    schemaUse:
      'Put <code>"$schema": "…/schemas/fleet.json"</code> first in a file, and an editor helps while you type; the readers leave it alone. Files say their <code>version</code>: a reader takes the versions it knows and refuses others with a reason. Fields are added within a version, never given another meaning.',
    schemaLimits:
      'What a schema cannot say is checked by the reader only: that an outline closes and a last day comes after the survey, that an id stands once and is known where it is named, that hours rise, that the calendar has the day, and how one figure limits another.',
  },
  checklists: {
    title: 'Checklists',
    description:
      'Short checklists for small open boats, from the weather to the way home. Tick them on a phone, print each on one page.',
    lead: 'Short lists for small open boats, from the weather to the way home. Tick them on the phone, or print each on one page and keep it with the boat. Points that depend on boat, crew or weather follow the trip in the <a href="/">planner</a>, if there is one.',
    points: (count: number) => `${count} points`,
    law: 'Local law decides what you must carry and do, and it differs from country to country and from harbour to harbour. Where a list and the law, the boat’s plate, the maker’s manual or the practice you are licensed or trained for disagree, the list is wrong for you.',
    all: 'All checklists',
    boat: 'Boat',
    skipper: 'Skipper',
    when: 'Date and time',
    next: 'Next list:',
  },
  embed: {
    title: 'On your own site',
    description:
      'Put the planner, a reserve check, a checklist or a table of engines on your own page: choose, look, copy. With every attribute, event and colour of each element.',
    heading: 'On your own site',
    lead: 'A club, a hire desk or a dealer can show any of these elements on a page of its own. Choose one, look at it, and copy two lines. Nothing is loaded from here or from anybody else unless you say so.',
    build: 'Choose and copy',
    element: 'Element',
    folder: 'Folder of the scripts on your site',
    lang: 'Language',
    langOfPage: 'that of your page',
    scheme: 'Light or dark',
    schemes: { page: 'as your page', light: 'light', dark: 'dark' },
    accent: 'Colour of lines and buttons',
    own: 'as it comes',
    attributes: 'Its attributes',
    unset: 'not set',
    markup: 'In the page',
    sheet: 'In your style sheet',
    copy: 'Copy',
    copied: 'Copied.',
    notCopied: 'Could not be copied. It is selected: copy it with the keyboard.',
    live: 'This is how it looks',
    told: 'What it told the page',
    nothingTold: 'Nothing yet. Change something in the element.',
    noScript: 'Choosing needs JavaScript. This puts the planner on a page:',
    howTo: 'How to put it there',
    steps: [
      'Build the site, or take the package: <code>npm run build</code> leaves the folder <code>dist/embed</code>. Copy it to your site, for example as <code>/embed/</code>.',
      'Put the two lines of the snippet where the element should stand.',
      'Set your waters, boats and rules by the attributes and properties below. What comes with it is invented.',
      'Read what your page now answers for: whoever shows an answer shows the cautions with it. They are part of each element; do not hide them.',
    ],
    policy: 'Content policy',
    policyText:
      "Works under this strict policy and needs no exception: no inline scripts or styles, no <code>eval</code>. Add the address of your map pictures to <code>img-src</code> if you use any, that of waters or a forecast to <code>connect-src</code>, and <code>worker-src 'self'</code> if long sums should run beside the page; without it they run in small slices.",
    requests: 'What it asks for',
    asked: [
      ['Its own parts', 'From the folder you copied, when they are shown.'],
      ['Waters, boat profile', 'Only the addresses you set.'],
      ['Map pictures', 'Only at the press of the street map’s button, or if you set <code>tiles</code>.'],
      ['Forecast', 'Only at a press, from the address you set.'],
      ['Anything else', 'Nothing: no counting of visitors, no cookies, no fonts.'],
    ],
    keeps:
      'What is typed stays in the reader’s browser, under your site’s address; <code>keep="none"</code> keeps nothing.',
    frame: 'In a frame of its own height',
    frameText:
      'Where only a frame can be placed, the framed page tells its height: the planner with <code>tell-size</code>, any other element with the first script. The second goes on the page around it. The <a href="/gallery/">gallery</a> does it with these very lines.',
    frameworks: 'With a framework',
    frameworksText:
      'The package has modules and types for bundlers. Simple values go in as attributes, objects as properties; events are those of the reference.',
    promise: 'What stays as it is',
    promiseText: [
      'Versions are numbered major.minor.patch. Attributes, properties, methods, events with their details, slots, parts, custom properties and the shapes of files are promised: what breaks one of them raises the first number, and the <a href="/changes/">list of changes</a> says what to do.',
      'Files and links of older versions are read for good. Figures are not promised: a better model changes answers, and the list says why.',
      'Keep to one version on a page. A second one leaves the first in charge and says so in the console.',
    ],
    gallery:
      '<a href="/gallery/">Pages that carry the elements</a>: a club, a hire desk, a dealer, a dark page and a narrow column.',
    reference: 'Reference',
    referenceText: 'Made from the source with every build.',
    english: '',
    kinds: {
      attributes: 'Attributes and properties',
      methods: 'Methods',
      events: 'Events',
      slots: 'Slots',
      parts: 'Parts',
      cssProperties: 'Custom properties',
    },
    ofAll: 'Of all elements',
    attribute: 'attribute',
    property: 'property only',
    readOnly: 'read only',
    usually: 'usually',
    defaultSlot: 'without a name',
  },
  gallery: {
    title: 'Gallery',
    description:
      'Elements of Homeleg on invented pages of a club, a hire desk and a boat dealer, dark and in a narrow column.',
    heading: 'Pages that carry them',
    lead: 'The first two are whole pages of others, framed at their own height; the rest are elements on this page. Clubs, firms, boats and waters are made up.',
    back: '<a href="/embed/">Choose and copy your own</a>',
    snippet: 'The snippet',
    loading: 'Loads when it comes into view, and needs JavaScript.',
    framed: 'Loads when it comes into view, and needs JavaScript and, as a page of others, a network.',
    alone: (name: string) => `${name}: the page alone`,
    source: 'The page in the frame',
    around: 'The frame on the page around it',
    invented: 'An invented page, to show how an element stands on one. Nobody is behind it.',
    booking: {
      button: 'Book this boat',
      booked: 'Invented: nothing was sent. Your own server would now get:',
    },
    pages: {
      club: [
        'A club',
        'A page of a club in a frame, with its own colours and a rule of the house: half of the fuel is kept. Rules of a page only tighten those of the user.',
      ],
      desk: [
        'A hire desk',
        'A booking page in a frame: boat, weights, fuel gauge, hours. The form sends the trip once there is an answer.',
      ],
      dealer: ['A dealer', 'Which engine for which crew, on one hull, beside the offer.'],
      dark: ['A dark page', 'The element follows <code>color-scheme</code>; nothing else is needed.'],
      narrow: [
        'A narrow column',
        'A checklist in 280 pixels beside an article. It goes by its own width, not by that of the screen.',
      ],
    },
    club: { name: 'Our boat club', text: 'Before you cast off: does the day fit the tank?' },
    desk: { name: 'Boats for hire', text: 'Fill this in together at the counter.' },
    dealer: { name: 'Open boat, 4.2 m', text: 'For lakes and estuaries. Ask at the yard for a trial run.' },
    dark: { name: 'Log of the evening', text: 'What would suit for the way we use it?' },
    narrow: {
      name: 'Fitting out',
      text: 'The season begins on the trailer. Tyres, lights, straps, then the boat. Half an hour with the list saves the tow home. Print it once and keep it with the papers.',
    },
  },
};

/** The texts of all pages in one language. */
export type SiteTexts = typeof siteTexts;
