import type { SiteTexts } from './en.ts';

export const siteTexts: SiteTexts = {
  language: 'Sprache',
  skip: 'Zum Inhalt',
  pages: 'Seiten',
  places: {
    '/': 'Planer',
    '/trials/': 'Messfahrten',
    '/engines/': 'Motoren',
    '/suit/': 'Was passt',
    '/hire/': 'Verleih',
    '/waters/': 'Revier',
    '/checklists/': 'Checklisten',
    '/method/': 'Methode (englisch)',
    '/search/': 'Suche',
  },
  foot: {
    caution:
      '<strong>Zum Planen an Land, nicht zum Navigieren.</strong> Plakette und Handbuch des Bootes, die Regeln vor Ort und die Praxis, für die man Schein oder Ausbildung hat, gehen vor. Wer das Boot führt, entscheidet.',
    model:
      'Homeleg rechnet mit Modellen. Ein Boot, das niemand gemessen hat, kann weit davon abweichen; die Antworten tragen deshalb ein Band.',
    kept: 'Eingaben bleiben auf diesem Gerät. Boote, Motoren und Reviere, die mit der Seite kommen, sind erfunden.',
    method: '<a href="/method/">Wie die Antwort berechnet wird</a> (englisch), und wo sie zu kurz greift.',
    embed: '<a href="/embed/">Auf die eigene Website setzen</a>, und <a href="/gallery/">Seiten damit</a>.',
  },
  previewAlt: 'Ein Balken von voll bis leer: der Hinweg, der Heimweg und der Teil, der bleibt',
  search: {
    title: 'Suche',
    description:
      'Einen Punkt einer Checkliste oder eine Stelle finden. Die Suche läuft auf diesem Gerät, auch ohne Netz.',
    site: 'Website',
    label: 'Diese Seiten durchsuchen',
    words: 'Gesuchte Wörter',
    button: 'Suchen',
    hint: 'Läuft auf diesem Gerät, auch ohne Netz; nichts Eingegebenes verlässt es.',
    noScript: 'Die Suche braucht JavaScript. Alles steht auf diesen Seiten:',
    all: 'Alle Seiten',
  },
  home: {
    description:
      'Mit diesem Boot, dieser Beladung und diesem Tank: kommen wir hin und zurück, und bleibt etwas übrig? Ein Fahrtenplaner für kleine offene Motorboote, Benzin oder elektrisch.',
    heading: 'Hin und zurück, und etwas bleibt übrig?',
    lead: 'Angeben, welches Boot es ist, wer mitkommt und wie viel in Tank oder Akku ist. Homeleg berechnet, ob die Fahrt gelingt, wie sicher das ist, und was zu ändern ist, wenn nicht.',
    loading:
      'Der Planer lädt. Er läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    reading: 'Wie die Antwort zu lesen ist',
    bar: [
      ['Hinweg', 'Mit der Beladung, den Plätzen, dem Wind und dem Strom, wie angegeben.'],
      ['Heimweg', 'Leichter um den verbrannten Kraftstoff, bei Wind und Strom, wie sie dann sind.'],
      ['Bleibt', 'Ein Drittel, oder mehr, wenn gewählt. Der Plan darf es nicht angreifen.'],
    ],
    answers: 'Drei Antworten',
    measure:
      'Ein Boot, das niemand gemessen hat, bekommt ein breites Band und braucht für die erste Antwort mehr im Tank. Drei Messfahrten mit Uhr und Tankanzeige machen es schmaler. <a href="/trials/">Das Boot messen</a>.',
    also: [
      [
        'Checklisten',
        'Vom <a href="/checklists/weather/">Wetter</a> über <a href="/checklists/before-launch/">vor dem Slippen</a> bis <a href="/checklists/overdue/">überfällig</a>, für die Person an Land. <a href="/checklists/">Alle Listen</a> lassen sich auf dem Telefon abhaken oder drucken.',
      ],
      [
        'Verleih',
        'Zwei Gewichte und eine Tankanzeige: <a href="/hire/">eine Reserveprüfung zum Mitgeben</a>, mit der Zeit der Rückkehr.',
      ],
      [
        'Methode',
        '<a href="/method/">Was berechnet wird und wie</a> (englisch), nach welchen Veröffentlichungen, und wo es zu kurz greift.',
      ],
      [
        'Ohne Netz',
        'Nach dem ersten Besuch gehen alle Seiten auch ohne Netz, und das Menü des Browsers kann sie wie eine App einrichten. Nur Bilder der Straßenkarte werden nie auf dem Gerät behalten.',
      ],
    ],
  },
  engines: {
    title: 'Beladungen und Motoren',
    description:
      'Ein Boot, Mannschaften von einer bis vier Personen, mehrere Motoren, Propeller, Tanks und Akkus: was gleitet, wie schnell, wie durstig, wie weit, und was noch zuzuladen ist.',
    heading: 'Beladungen und Motoren',
    lead: 'Ein Boot mit einer bis vier Personen gegen Motoren, Propeller, Tanks und Akkus nach Wahl: gleitet es, wie schnell, wie durstig, wie weit, und was darf noch an Bord.',
    loading:
      'Die Tabelle lädt. Sie läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    reading: 'Wie sie zu lesen ist',
    paragraphs: [
      'Jede Zahl steht für Boote wie dieses; in Klammern steht, wozwischen acht von zehn liegen. Ein gemessenes Boot bekommt ein schmaleres Band: seine Datei über der Tabelle öffnen. Die Plakette am Boot geht vor jeder Zahl hier.',
      'Gesucht ist ein Boot und kein Motor? <a href="/suit/">Angeben, wofür es sein soll</a>, und sehen, welches passen würde.',
    ],
  },
  suit: {
    title: 'Was passen würde',
    description:
      'Angeben, wer mitkommt, wie weit, auf welchem Wasser und wie schnell, und sehen, welches Boot mit welchem Motor, Propeller, Tank oder Akku es täte, und warum die anderen ausfallen.',
    heading: 'Was würde passen?',
    lead: 'Angeben, wer mitkommt, wie weit es gehen soll, wie schnell und auf welchem Wasser. Jedes Beispielboot wird mit jedem Motor, Tank und Akku versucht; was nicht passt, sagt warum.',
    loading:
      'Die Suche lädt. Sie läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    asks: 'Was sie von einem Boot verlangt',
    points: [
      'Die Plakette ist eingehalten: Personen, Gewicht, Leistung und Gewicht des Motors.',
      'Die gewünschte Geschwindigkeit wird mit allen an Bord gehalten, und das Boot kommt dafür über die Gleitschwelle.',
      'Hin und zurück bleibt ein Drittel übrig, und auch an einem schlechten Tag etwas bei der Rückkehr.',
      'Was zu tragen ist, lässt sich tragen.',
    ],
    start:
      'Ein Anfang, mehr nicht. <a href="/engines/">Motoren gegen Beladungen</a> auf dem Boot der Wahl vergleichen und eines ausprobieren, bevor es gekauft oder gemietet wird.',
  },
  trials: {
    title: 'Messfahrten',
    description:
      'Das eigene Boot messen: Messfahrten eingetippt oder aus einem Track, die Verbrauchskurve daraus, wie sicher sie ist, und ein Bootsprofil für den Planer.',
    heading: 'Das Boot messen',
    lead: 'Eintippen, was Log, Durchflussmesser oder Amperemeter zeigten, oder einen Track öffnen. Jede Messfahrt macht das Band der Verbrauchskurve schmaler; heraus kommt ein Bootsprofil, mit dem der Planer rechnet.',
    loading:
      'Die Seite lädt. Sie läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    how: 'Wie eine Messfahrt gemacht wird',
    points: [
      'Eine Gasstellung, gehalten, bis die Geschwindigkeit gleich bleibt, dann eine Minute oder mehr geradeaus.',
      'Dann dasselbe in der anderen Richtung, damit der Strom sich aufhebt. Vier Durchgänge sind besser als zwei.',
      'Niemand wechselt den Platz. Aufschreiben, wer wo sitzt und was im Tank ist.',
      'Langsam, auf der Gleitschwelle und im Gleiten: eine Kurve ist bekannt, wo sie erprobt wurde, und sonst geraten.',
      'Mindestens einmal am Tag die Beladung wechseln.',
    ],
    lookout:
      'Neben der Person, die schreibt, hält eine Ausguck; Quickstopp-Leine an, weit von Badenden, Liegeplätzen und anderen Booten; Tempolimits gelten auch für Messfahrten.',
  },
  hire: {
    title: 'Verleih',
    description:
      'Ein Verleihtresen im Browser: morgens einmal einstellen, jede Vermietung in sechs Antworten prüfen, einen Zettel mit Code mitgeben und sehen, wer draußen und wer zu spät ist.',
    heading: 'Verleih',
    lead: 'Morgens einmal einstellen. Jede Vermietung in sechs Antworten prüfen, einen Zettel mitgeben und sehen, wer draußen und wer zu spät ist. Alles bleibt in diesem Browser und geht ohne Netz.',
    loading:
      'Der Verleih lädt. Er läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    sections: [
      [
        'Was er tut, und was nicht',
        'Die Antwort kommt aus derselben Rechnung wie die des <a href="/">Planers</a>. Sie kann nur dann ein klares Ja sein, wenn jemand für die Flotte einsteht, der Morgen eingestellt und von heute ist, die Plakette abgelesen und der Füllstand gemessen ist. Motorausfall, Wetterumschlag und was die Mieter tun, stecken nicht in den Zahlen.',
        'Mietrecht, Branchenregeln und Versicherung sagen, was am Ort gezeigt, aufgeschrieben und unterschrieben werden muss. Sie gehen dieser Seite vor. Eine geschlossene Seite kann vor keinem Boot warnen, das zu spät ist: offen lassen, und eine Uhr daneben.',
      ],
      [
        'Was der Verleih behält',
        'Nichts verlässt diesen Rechner. Namen sind nicht nötig. Flotte, Morgen, Vermietungen und Nachfüllungen bleiben in diesem Browser; sie lassen sich als eine Datei speichern, auf einem anderen Rechner laden und löschen.',
      ],
      [
        'Eine eigene Flotte',
        'Boote lassen sich eintippen oder kommen in einer Datei: wer für sie einsteht, seit wann und bis wann; jedes Boot mit seiner Plakette, der Geschwindigkeit, für die es vermietet wird, und entweder den Zahlen eines ähnlichen Bootes, eigenen Zahlen oder dem Profil aus seinen <a href="/trials/">Messfahrten</a>. Die erfundene Flotte als Datei speichern zeigt, wie eine geschrieben wird. Bei der Rückgabe notierte Nachfüllungen zählen als Hinweis darauf, was dieses Boot braucht.',
      ],
    ],
  },
  waters: {
    title: 'Revierdaten',
    description:
      'Eine Datei mit Revierdaten zeichnen und prüfen: Land, Untiefen, Tempolimits, gesperrte Gebiete, Landeplätze, Stromorte und feste Routen. Und eine Flottendatei prüfen.',
    heading: 'Das eigene Revier zeichnen',
    lead: 'Land, Untiefen, Tempolimits, gesperrte Gebiete, Landeplätze, Ströme und feste Routen, auf der Karte oder in Tabellen. Fehler werden mit ihrer Stelle in der Datei gezeigt, und was merkwürdig aussieht, wird genannt.',
    loading:
      'Die Seite für das Revier lädt. Sie läuft im Browser und braucht JavaScript; die <a href="/checklists/">Checklisten</a> gehen auch ohne.',
    fleet: 'Eine Flottendatei',
    fleetLead:
      'Boote, feste Routen und Tage eines Verleihs, geprüft wie am Tresen selbst. Was hier getippt wird, bleibt erst mit dem Sichern der Datei; der Verleih behält seine eigene.',
    sections: [
      [
        'Was diese Daten sind und was nicht',
        'Revierdaten sagen dem <a href="/">Planer</a>, wo Land, Tiefe und Regeln im Weg stehen. Sie sind keine Seekarte. Wer sie zeichnet, steht dafür ein: aus gültigen Karten und Bekanntmachungen nehmen, auf dem Wasser ansehen und sagen, bis wann sie gelten. Danach ist keine Fahrt darin mehr als „nicht sicher genug“.',
        'Innerhalb des Rahmens gilt als Wasser, tief genug und offen für alle, was nicht als Land gezeichnet ist. Also das ganze Ufer im Rahmen zeichnen oder den Rahmen kleiner machen.',
      ],
      [
        'Die Datei',
        'Sie ist reines GeoJSON (RFC 7946): Grad in WGS 84, die Länge zuerst. Jedes Feature hat <code>kind</code> und <code>name</code>; was hier nicht bekannt ist, bleibt, wie es ist. <code>responsible</code>, <code>surveyed</code> und <code>validUntil</code> stehen neben <code>features</code>. Eine andere Seite legt die Datei dorthin, wo ihr Element sie findet: <code>&lt;homeleg-planner waters="/unsere-bucht.geojson"&gt;</code>.',
      ],
    ],
    schemas: 'Schemas für Editoren und Programme',
    schemasLead: 'JSON Schema, Entwurf 2020-12, gemacht aus dem, was die Leser dieser Seite prüfen:',
    schemaList: [
      ['trip', 'eine Fahrt'],
      ['profile', 'ein gemessenes Boot'],
      ['waters', 'Revierdaten'],
      ['fleet', 'die Flotte eines Verleihs'],
      ['saved', 'gesicherte Fahrten und Boote'],
      ['desk', 'alles, was ein Verleih behalten hat'],
    ],
    schemaUse:
      '<code>"$schema": "…/schemas/fleet.json"</code> als Erstes in der Datei, und ein Editor hilft beim Schreiben; die Leser lassen es stehen. Dateien nennen ihre <code>version</code>: Ein Leser nimmt die, die er kennt, und weist andere mit Grund zurück. Innerhalb einer Version kommen Felder dazu, keines bekommt einen anderen Sinn.',
    schemaLimits:
      'Was ein Schema nicht sagen kann, prüft nur der Leser: dass ein Umriss schließt und der letzte Tag nach der Aufnahme liegt, dass eine id nur einmal steht und bekannt ist, wo sie genannt wird, dass Stunden steigen, dass der Kalender den Tag hat und wie eine Zahl eine andere begrenzt.',
  },
  checklists: {
    title: 'Checklisten',
    description:
      'Kurze Checklisten für kleine offene Boote, vom Wetter bis zum Heimweg. Auf dem Telefon abhaken, jede auf eine Seite drucken.',
    lead: 'Kurze Listen für kleine offene Boote, vom Wetter bis zum Heimweg. Auf dem Telefon abhaken oder jede auf eine Seite drucken und beim Boot aufbewahren. Punkte, die von Boot, Mannschaft oder Wetter abhängen, folgen der Fahrt im <a href="/">Planer</a>, wenn es eine gibt.',
    points: (count) => `${count} Punkte`,
    law: 'Das Recht vor Ort entscheidet, was mitzuführen und zu tun ist, und es unterscheidet sich von Land zu Land und von Hafen zu Hafen. Wo eine Liste dem Recht, der Plakette am Boot, dem Handbuch des Herstellers oder der Praxis, für die man Schein oder Ausbildung hat, widerspricht, ist die Liste falsch.',
    all: 'Alle Checklisten',
    boat: 'Boot',
    skipper: 'Schiffsführer',
    when: 'Datum und Zeit',
    next: 'Nächste Liste:',
  },
  embed: {
    title: 'Auf der eigenen Website',
    description:
      'Planer, Reserveprüfung, Checkliste oder Motorentabelle auf der eigenen Seite: auswählen, ansehen, kopieren. Mit allen Attributen, Ereignissen und Farben jedes Elements.',
    heading: 'Auf der eigenen Website',
    lead: 'Verein, Verleih oder Händler können jedes dieser Elemente auf einer eigenen Seite zeigen. Eines auswählen, ansehen, zwei Zeilen kopieren. Von hier oder von anderen wird nichts geladen, wenn es nicht verlangt ist.',
    build: 'Auswählen und kopieren',
    element: 'Element',
    folder: 'Ordner der Skripte auf der eigenen Website',
    lang: 'Sprache',
    langOfPage: 'die der Seite',
    scheme: 'Hell oder dunkel',
    schemes: { page: 'wie die Seite', light: 'hell', dark: 'dunkel' },
    accent: 'Farbe der Linien und Knöpfe',
    own: 'wie mitgeliefert',
    attributes: 'Seine Attribute',
    unset: 'nicht gesetzt',
    markup: 'In die Seite',
    sheet: 'In das Stylesheet',
    copy: 'Kopieren',
    copied: 'Kopiert.',
    notCopied: 'Ließ sich nicht kopieren. Der Text ist markiert: mit der Tastatur kopieren.',
    live: 'So sieht es aus',
    told: 'Was es der Seite gemeldet hat',
    nothingTold: 'Noch nichts. Im Element etwas ändern.',
    noScript: 'Das Auswählen braucht JavaScript. Damit steht der Planer auf einer Seite:',
    howTo: 'Wie es dorthin kommt',
    steps: [
      'Die Website bauen oder das Paket nehmen: <code>npm run build</code> legt den Ordner <code>dist/embed</code> an. Ihn auf die eigene Website kopieren, etwa als <code>/embed/</code>.',
      'Die beiden Zeilen dort einsetzen, wo das Element stehen soll.',
      'Eigenes Revier, eigene Boote und Regeln über die Attribute und Eigenschaften unten setzen. Was mitkommt, ist erfunden.',
      'Bedenken, wofür die Seite nun einsteht: Wer eine Antwort zeigt, zeigt auch die Warnungen dazu. Sie gehören zu jedem Element und werden nicht ausgeblendet.',
    ],
    policy: 'Inhaltsrichtlinie',
    policyText:
      "Läuft unter dieser strengen Richtlinie ohne Ausnahme: keine Skripte oder Stile im Text der Seite, kein <code>eval</code>. Die Adresse eigener Kartenbilder kommt zu <code>img-src</code>, die von Revier oder Vorhersage zu <code>connect-src</code>, und <code>worker-src 'self'</code> dazu, wenn lange Rechnungen neben der Seite laufen sollen; ohne das laufen sie in kleinen Stücken.",
    requests: 'Was es abruft',
    asked: [
      ['Eigene Teile', 'Aus dem kopierten Ordner, sobald sie gezeigt werden.'],
      ['Revier, Bootsprofil', 'Nur von den gesetzten Adressen.'],
      ['Kartenbilder', 'Erst beim Druck auf den Knopf der Straßenkarte, oder wenn <code>tiles</code> gesetzt ist.'],
      ['Vorhersage', 'Erst beim Druck auf den Knopf, von der gesetzten Adresse.'],
      ['Alles andere', 'Nichts: keine Besucherzählung, keine Cookies, keine Schriften.'],
    ],
    keeps:
      'Eingaben bleiben im Browser der Besucher, unter der Adresse der eigenen Website; <code>keep="none"</code> behält nichts.',
    frame: 'In einem Rahmen von eigener Höhe',
    frameText:
      'Wo nur ein Rahmen möglich ist, teilt die gerahmte Seite ihre Höhe mit: der Planer mit <code>tell-size</code>, jedes andere Element mit dem ersten Skript. Das zweite gehört auf die Seite ringsum. Die <a href="/gallery/">Galerie</a> macht es mit genau diesen Zeilen.',
    frameworks: 'Mit einem Framework',
    frameworksText:
      'Das Paket hat Module und Typen für Bündelprogramme. Einfache Werte gehen als Attribute hinein, Objekte als Eigenschaften; die Ereignisse stehen in der Referenz.',
    promise: 'Was so bleibt',
    promiseText: [
      'Fassungen heißen major.minor.patch. Attribute, Eigenschaften, Methoden, Ereignisse mit ihren Angaben, Slots, Parts, CSS-Variablen und die Formen der Dateien sind zugesagt: Was eines davon bricht, erhöht die erste Zahl, und die <a href="/changes/">Liste der Änderungen</a> sagt, was zu tun ist.',
      'Dateien und Links älterer Fassungen bleiben auf Dauer lesbar. Zahlen sind nicht zugesagt: Ein besseres Modell ändert Antworten, und die Liste sagt warum.',
      'Auf einer Seite bei einer Fassung bleiben. Eine zweite lässt die erste im Amt und sagt es in der Konsole.',
    ],
    gallery:
      '<a href="/gallery/">Seiten mit den Elementen</a>: ein Verein, ein Verleih, ein Händler, eine dunkle Seite und eine schmale Spalte.',
    reference: 'Referenz',
    referenceText: 'Bei jedem Bau aus dem Quelltext gemacht.',
    english: 'Die Beschreibungen sind englisch.',
    kinds: {
      attributes: 'Attribute und Eigenschaften',
      methods: 'Methoden',
      events: 'Ereignisse',
      slots: 'Slots',
      parts: 'Parts',
      cssProperties: 'CSS-Variablen',
    },
    ofAll: 'Von allen Elementen',
    attribute: 'Attribut',
    property: 'nur Eigenschaft',
    readOnly: 'nur lesen',
    usually: 'sonst',
    defaultSlot: 'ohne Namen',
  },
  gallery: {
    title: 'Galerie',
    description:
      'Elemente von Homeleg auf erfundenen Seiten eines Vereins, eines Verleihs und eines Händlers, dunkel und in schmaler Spalte.',
    heading: 'Seiten mit den Elementen',
    lead: 'Die ersten beiden sind ganze Seiten von anderen, gerahmt in ihrer eigenen Höhe; die übrigen sind Elemente auf dieser Seite. Vereine, Firmen, Boote und Reviere gibt es nicht.',
    back: '<a href="/embed/">Selbst auswählen und kopieren</a>',
    snippet: 'Der Schnipsel',
    loading: 'Lädt, sobald es ins Blickfeld kommt, und braucht JavaScript.',
    framed: 'Lädt, sobald es ins Blickfeld kommt, und braucht JavaScript und, als Seite von anderen, ein Netz.',
    alone: (name: string) => `${name}: die Seite allein`,
    source: 'Die Seite im Rahmen',
    around: 'Der Rahmen auf der Seite ringsum',
    invented: 'Eine erfundene Seite, die zeigt, wie ein Element auf einer steht. Niemand steht dahinter.',
    booking: {
      button: 'Dieses Boot buchen',
      booked: 'Erfunden: Es wurde nichts gesendet. Der eigene Server bekäme jetzt:',
    },
    pages: {
      club: [
        'Ein Verein',
        'Die Seite eines Vereins in einem Rahmen, mit eigenen Farben und einer Hausregel: Die Hälfte des Kraftstoffs bleibt. Regeln der Seite verschärfen nur die der Benutzer.',
      ],
      desk: [
        'Ein Verleih',
        'Eine Buchungsseite in einem Rahmen: Boot, Gewichte, Tankanzeige, Stunden. Das Formular sendet die Fahrt, sobald es eine Antwort gibt.',
      ],
      dealer: ['Ein Händler', 'Welcher Motor für welche Besatzung, auf einem Rumpf, neben dem Angebot.'],
      dark: ['Eine dunkle Seite', 'Das Element folgt <code>color-scheme</code>; mehr braucht es nicht.'],
      narrow: [
        'Eine schmale Spalte',
        'Eine Checkliste in 280 Pixeln neben einem Artikel. Sie richtet sich nach der eigenen Breite, nicht nach der des Bildschirms.',
      ],
    },
    club: { name: 'Unser Bootsclub', text: 'Vor dem Ablegen: Passt der Tag zum Tank?' },
    desk: { name: 'Boote zu mieten', text: 'Zusammen an der Theke ausfüllen.' },
    dealer: { name: 'Offenes Boot, 4,2 m', text: 'Für Seen und Flussmündungen. Probefahrt auf Anfrage in der Werft.' },
    dark: { name: 'Logbuch am Abend', text: 'Was würde passen, so wie wir es nutzen?' },
    narrow: {
      name: 'Klarmachen',
      text: 'Die Saison beginnt auf dem Trailer. Reifen, Licht, Gurte, dann das Boot. Eine halbe Stunde mit der Liste erspart das Abschleppen. Einmal drucken und zu den Papieren legen.',
    },
  },
};
