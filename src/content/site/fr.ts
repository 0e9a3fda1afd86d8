import type { SiteTexts } from './en.ts';

export const siteTexts: SiteTexts = {
  language: 'Langue',
  skip: 'Aller au contenu',
  pages: 'Pages',
  places: {
    '/': 'Préparer',
    '/trials/': 'Essais',
    '/engines/': 'Moteurs',
    '/suit/': 'Ce qui convient',
    '/hire/': 'Location',
    '/waters/': 'Eaux',
    '/checklists/': 'Listes de contrôle',
    '/method/': 'Méthode (anglais)',
    '/search/': 'Recherche',
  },
  foot: {
    caution:
      '<strong>Pour préparer à terre, pas pour naviguer.</strong> La plaque et le manuel du bateau, les règles locales et la pratique pour laquelle vous avez un permis ou une formation passent avant. Le chef de bord décide.',
    model:
      'Homeleg calcule avec des modèles. Un bateau que personne n’a mesuré peut s’en écarter beaucoup\u00a0; les réponses portent donc une fourchette.',
    kept: 'Ce que vous saisissez reste sur cet appareil. Les bateaux, moteurs et eaux fournis avec le site sont inventés.',
    method: '<a href="/method/">Comment la réponse est calculée</a> (en anglais), et ce qui lui manque.',
    embed: '<a href="/embed/">Mettre sur votre site</a>, et <a href="/gallery/">des pages qui le portent</a>.',
  },
  previewAlt: 'Une barre du plein au vide\u00a0: l’aller, le retour, et la part qui est gardée',
  search: {
    title: 'Recherche',
    description:
      'Trouver un point d’une liste de contrôle ou un passage. La recherche se fait sur cet appareil, même hors ligne.',
    site: 'Site',
    label: 'Chercher dans ces pages',
    words: 'Mots à chercher',
    button: 'Chercher',
    hint: 'Se fait sur cet appareil, même hors ligne\u00a0; rien de ce que vous saisissez ne le quitte.',
    noScript: 'La recherche a besoin de JavaScript. Tout se trouve dans ces pages\u00a0:',
    all: 'Toutes les pages',
  },
  home: {
    description:
      'Avec ce bateau, cette charge et ce réservoir\u00a0: irons-nous et reviendrons-nous avec un reste\u00a0? Un outil de préparation des sorties pour petits bateaux à moteur ouverts, essence ou électriques.',
    heading: 'Aller et revenir, avec un reste\u00a0?',
    lead: 'Dites quel est le bateau, qui vient et ce qu’il y a dans le réservoir ou la batterie. Homeleg calcule si la sortie est possible, avec quelle certitude, et ce qu’il faut changer sinon.',
    loading:
      'La page se charge. Elle fonctionne dans le navigateur et a besoin de JavaScript\u00a0; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    reading: 'Comment lire la réponse',
    bar: [
      ['Aller', 'Avec la charge, les places, le vent et le courant que vous avez donnés.'],
      ['Retour', 'Plus léger du carburant brûlé, avec le vent et le courant qu’il y a alors.'],
      ['Gardé', 'Un tiers, ou plus si vous le choisissez. Le plan ne peut pas y toucher.'],
    ],
    answers: 'Trois réponses',
    measure:
      'Un bateau que personne n’a mesuré reçoit une large fourchette, et demande plus au réservoir pour la première réponse. Trois essais avec une montre et une jauge la resserrent. <a href="/trials/">Mesurer votre bateau</a>.',
    also: [
      [
        'Listes de contrôle',
        'De la <a href="/checklists/weather/">météo</a> à <a href="/checklists/overdue/">en retard</a>, pour la personne à terre, en passant par <a href="/checklists/before-launch/">avant la mise à l’eau</a>. <a href="/checklists/">Toutes les listes</a> se cochent sur le téléphone ou s’impriment.',
      ],
      [
        'Location',
        'Deux poids et une jauge\u00a0: <a href="/hire/">un contrôle de réserve à remettre</a>, avec l’heure du retour.',
      ],
      [
        'Méthode',
        '<a href="/method/">Ce qui est calculé et comment</a> (en anglais), d’après quelles publications, et ce qui lui manque.',
      ],
      [
        'Sans réseau',
        'Après la première visite, toutes les pages fonctionnent hors ligne, et le menu du navigateur peut les installer comme une application. Seules les images du plan des rues ne sont jamais gardées sur l’appareil.',
      ],
    ],
  },
  engines: {
    title: 'Charges et moteurs',
    description:
      'Un bateau, des équipages d’une à quatre personnes, plusieurs moteurs, hélices, réservoirs et batteries\u00a0: qui déjauge, à quelle vitesse, avec quelle consommation, jusqu’où, et ce qui reste de marge.',
    heading: 'Charges et moteurs',
    lead: 'Un bateau avec une à quatre personnes, face aux moteurs, hélices, réservoirs et batteries auxquels vous pensez\u00a0: déjauge-t-il, à quelle vitesse, avec quelle consommation, jusqu’où, et que peut-il encore embarquer.',
    loading:
      'Le tableau se charge. Il fonctionne dans le navigateur et a besoin de JavaScript\u00a0; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    reading: 'Comment le lire',
    paragraphs: [
      'Chaque chiffre vaut pour des bateaux comme celui-ci\u00a0; entre parenthèses, les bornes où se tiennent huit sur dix. Un bateau que quelqu’un a mesuré reçoit une fourchette plus étroite\u00a0: ouvrez son fichier au-dessus du tableau. La plaque du bateau passe avant tout chiffre ici.',
      'Vous cherchez un bateau et non un moteur\u00a0? <a href="/suit/">Dites à quoi il doit servir</a>, et voyez lequel conviendrait.',
    ],
  },
  suit: {
    title: 'Ce qui conviendrait',
    description:
      'Dites qui vient, jusqu’où, sur quelle eau et à quelle vitesse, et voyez quel bateau, moteur, hélice et réservoir ou batterie ferait l’affaire, et pourquoi les autres sont exclus.',
    heading: 'Qu’est-ce qui conviendrait\u00a0?',
    lead: 'Dites qui vient, jusqu’où vous voulez aller, à quelle vitesse et sur quelle eau. Chaque bateau d’exemple est essayé avec chaque moteur, réservoir et batterie\u00a0; ce qui ne convient pas dit pourquoi.',
    loading:
      'La recherche se charge. Elle fonctionne dans le navigateur et a besoin de JavaScript\u00a0; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    asks: 'Ce qu’elle demande à un bateau',
    points: [
      'La plaque est respectée\u00a0: personnes, poids, puissance et poids du moteur.',
      'La vitesse souhaitée est tenue avec tout le monde à bord, et le bateau passe la bosse pour l’atteindre.',
      'L’aller et le retour avec un tiers gardé, et un reste au retour même un mauvais jour.',
      'Ce qui doit être porté peut l’être.',
    ],
    start:
      'C’est un point de départ. <a href="/engines/">Comparez moteurs et charges</a> sur le bateau auquel vous pensez, et essayez-en un avant d’acheter ou de louer.',
  },
  trials: {
    title: 'Essais',
    description:
      'Mesurer votre bateau\u00a0: des essais saisis ou lus d’une trace, la courbe de consommation qui en sort, sa certitude, et un profil de bateau pour préparer les sorties.',
    heading: 'Mesurer votre bateau',
    lead: 'Saisissez ce qu’ont dit le loch, le débitmètre ou l’ampèremètre, ou ouvrez une trace. Chaque essai resserre la fourchette de la courbe de consommation\u00a0; il en sort un profil de bateau avec lequel se préparent les sorties.',
    loading:
      'La page des essais se charge. Elle fonctionne dans le navigateur et a besoin de JavaScript\u00a0; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    how: 'Comment faire un essai',
    points: [
      'Un réglage des gaz, tenu jusqu’à ce que la vitesse soit constante, puis une minute ou plus en ligne droite.',
      'Ensuite la même chose dans l’autre sens, pour annuler le courant. Quatre passages valent mieux que deux.',
      'Personne ne change de place. Notez qui est assis où, et ce qu’il y a au réservoir.',
      'Lentement, sur la bosse et déjaugé\u00a0: une courbe est connue là où elle a été essayée, et devinée ailleurs.',
      'Changez la charge au moins une fois dans la journée.',
    ],
    lookout:
      'Un veilleur en plus de celui qui note, coupe-circuit attaché, loin des baigneurs, des mouillages et des autres bateaux\u00a0; les limites de vitesse valent aussi pour les essais.',
  },
  hire: {
    title: 'Location',
    description:
      'Un comptoir de location dans le navigateur\u00a0: réglez le matin une fois, contrôlez chaque location en six réponses, remettez une fiche avec un code, et voyez qui est sorti et qui est en retard.',
    heading: 'Comptoir de location',
    lead: 'Réglez le matin une fois. Contrôlez chaque location en six réponses, remettez une fiche, et voyez qui est sorti et qui est en retard. Tout reste dans ce navigateur et fonctionne sans réseau.',
    loading:
      'Le comptoir de location se charge. Il fonctionne dans le navigateur et a besoin de JavaScript\u00a0; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    sections: [
      [
        'Ce qu’il fait, et ce qu’il ne fait pas',
        'La réponse vient du même calcul que celle de la page <a href="/">Préparer</a>. Elle ne peut être un oui franc que tant que quelqu’un répond de la flotte, que le matin est réglé et encore valable, que la plaque a été lue et que le niveau du bateau a été mesuré. Panne de moteur, temps qui tourne et ce que fait le locataire ne sont pas dans les chiffres.',
        'Les règles de location, les codes de bonne pratique et l’assurance disent ce qui doit être montré, noté et signé là où vous êtes. Ils passent avant cette page. Une page fermée ne peut pas avertir d’un bateau en retard\u00a0: gardez-la ouverte, et une horloge à côté.',
      ],
      [
        'Ce que garde le comptoir',
        'Rien ne quitte cet ordinateur. Les noms ne sont pas nécessaires. Flotte, matin, locations et pleins sont gardés dans ce navigateur\u00a0; ils peuvent être enregistrés en un fichier, chargés sur un autre ordinateur, et effacés.',
      ],
      [
        'Votre propre flotte',
        'Les bateaux peuvent être saisis, ou venir d’un fichier\u00a0: qui en répond, depuis quand et jusqu’à quand\u00a0; chaque bateau avec sa plaque, la vitesse à laquelle il est loué, et soit les chiffres d’un bateau comme lui, soit ses propres chiffres, soit le profil tiré de ses <a href="/trials/">essais</a>. Enregistrez la flotte inventée en fichier pour voir comment il s’écrit. Les pleins notés au retour comptent comme indices de ce que consomme ce bateau.',
      ],
    ],
  },
  waters: {
    title: 'Eaux locales',
    description:
      'Dessiner et vérifier un fichier d’eaux locales : terre, hauts-fonds, limites de vitesse, zones interdites, débarcadères, lieux de courant et routes fixées. Et vérifier un fichier de flotte.',
    heading: 'Dessiner ses eaux locales',
    lead: 'Terre, hauts-fonds, limites de vitesse, zones interdites, débarcadères, courants et routes fixées de chez vous, sur une carte ou en tableaux. Les erreurs sont montrées avec leur place dans le fichier, et ce qui paraît étrange est signalé.',
    loading:
      'La page des eaux locales se charge. Elle fonctionne dans le navigateur et demande JavaScript ; les <a href="/checklists/">listes de contrôle</a> s’en passent.',
    fleet: 'Un fichier de flotte',
    fleetLead:
      'Bateaux, routes fixées et dates d’un loueur, vérifiés par le même lecteur qu’au comptoir. Rien de ce qui est tapé ici n’est gardé avant d’enregistrer le fichier ; le comptoir garde le sien.',
    sections: [
      [
        'Ce que sont ces eaux, et ce qu’elles ne sont pas',
        'Un fichier d’eaux locales dit au <a href="/">planificateur</a> où la terre, la profondeur et les règles font obstacle. Ce n’est pas une carte marine. Qui le dessine en répond : prenez-le de cartes et d’avis en vigueur, regardez-le sur l’eau, et dites jusqu’à quand il vaut. Après ce jour aucune sortie n’y est plus que « pas assez sûr ».',
        'Dans le cadre, ce qui n’est pas dessiné comme terre compte comme de l’eau, assez profonde et ouverte à tous. Dessinez donc tout le rivage dans le cadre, ou réduisez le cadre.',
      ],
      [
        'Le fichier',
        'C’est du GeoJSON pur (RFC 7946) : degrés WGS 84, longitude d’abord. Chaque élément a un <code>kind</code> et un <code>name</code> ; ce qui n’est pas connu ici reste tel quel. <code>responsible</code>, <code>surveyed</code> et <code>validUntil</code> sont à côté de <code>features</code>. Un autre site pose le fichier là où son élément le trouve : <code>&lt;homeleg-planner waters="/notre-baie.geojson"&gt;</code>.',
      ],
    ],
    schemas: 'Schémas pour éditeurs et programmes',
    schemasLead: 'JSON Schema, version 2020-12, tirés de ce que vérifient les lecteurs de ce site :',
    schemaList: [
      ['trip', 'une sortie'],
      ['profile', 'un bateau mesuré'],
      ['waters', 'des eaux locales'],
      ['fleet', 'la flotte d’un loueur'],
      ['saved', 'sorties et bateaux gardés'],
      ['desk', 'tout ce qu’un comptoir a gardé'],
    ],
    schemaUse:
      'Mettez <code>"$schema": "…/schemas/fleet.json"</code> en tête d’un fichier, et un éditeur aide pendant la frappe ; les lecteurs le laissent tranquille. Les fichiers disent leur <code>version</code> : un lecteur prend celles qu’il connaît et refuse les autres en disant pourquoi. Dans une version des champs s’ajoutent, aucun ne change de sens.',
    schemaLimits:
      'Ce qu’un schéma ne peut dire, seul le lecteur le vérifie : qu’un contour se ferme et que le dernier jour suit le relevé, qu’un id n’existe qu’une fois et est connu là où il est nommé, que les heures montent, que le calendrier a ce jour, et comment un chiffre en limite un autre.',
  },
  checklists: {
    title: 'Listes de contrôle',
    description:
      'De courtes listes de contrôle pour petits bateaux ouverts, de la météo au retour. Cochez-les sur un téléphone, imprimez chacune sur une page.',
    lead: 'De courtes listes pour petits bateaux ouverts, de la météo au retour. Cochez-les sur le téléphone, ou imprimez chacune sur une page et gardez-la avec le bateau. Les points qui dépendent du bateau, de l’équipage ou du temps suivent la sortie préparée sur la page <a href="/">Préparer</a>, s’il y en a une.',
    points: (count) => `${count} points`,
    law: 'Le droit local décide de ce que vous devez emporter et faire, et il diffère d’un pays à l’autre et d’un port à l’autre. Là où une liste contredit la loi, la plaque du bateau, le manuel du constructeur ou la pratique pour laquelle vous avez un permis ou une formation, c’est la liste qui est fausse pour vous.',
    all: 'Toutes les listes de contrôle',
    boat: 'Bateau',
    skipper: 'Chef de bord',
    when: 'Date et heure',
    next: 'Liste suivante\u00a0:',
  },
  embed: {
    title: 'Sur votre site',
    description:
      'Le planificateur, un contrôle de réserve, une liste ou un tableau de moteurs sur votre page\u00a0: choisir, regarder, copier. Avec chaque attribut, événement et couleur de chaque élément.',
    heading: 'Sur votre site',
    lead: 'Un club, un loueur ou un chantier peut montrer chacun de ces éléments sur sa propre page. Choisissez-en un, regardez-le, copiez deux lignes. Rien n’est chargé d’ici ni d’ailleurs sans que vous le demandiez.',
    build: 'Choisir et copier',
    element: 'Élément',
    folder: 'Dossier des scripts sur votre site',
    lang: 'Langue',
    langOfPage: 'celle de votre page',
    scheme: 'Clair ou sombre',
    schemes: { page: 'comme votre page', light: 'clair', dark: 'sombre' },
    accent: 'Couleur des lignes et des boutons',
    own: 'telle quelle',
    attributes: 'Ses attributs',
    unset: 'non défini',
    markup: 'Dans la page',
    sheet: 'Dans votre feuille de style',
    copy: 'Copier',
    copied: 'Copié.',
    notCopied: 'Copie impossible. Le texte est sélectionné\u00a0: copiez-le au clavier.',
    live: 'Voici ce que cela donne',
    told: 'Ce qu’il a dit à la page',
    nothingTold: 'Rien encore. Changez quelque chose dans l’élément.',
    noScript: 'Le choix demande JavaScript. Ceci met le planificateur sur une page\u00a0:',
    howTo: 'Comment l’y mettre',
    steps: [
      'Construisez le site ou prenez le paquet\u00a0: <code>npm run build</code> laisse le dossier <code>dist/embed</code>. Copiez-le sur votre site, par exemple sous <code>/embed/</code>.',
      'Mettez les deux lignes là où l’élément doit se trouver.',
      'Donnez vos eaux, vos bateaux et vos règles par les attributs et propriétés ci-dessous. Ce qui est fourni est inventé.',
      'Voyez de quoi votre page répond désormais\u00a0: qui montre une réponse montre aussi ses mises en garde. Elles font partie de chaque élément\u00a0; ne les cachez pas.',
    ],
    policy: 'Politique de contenu',
    policyText:
      "Fonctionne sous cette politique stricte sans exception\u00a0: ni scripts ni styles dans la page, pas de <code>eval</code>. Ajoutez l’adresse de vos images de carte à <code>img-src</code>, celle d’un fichier d’eaux ou d’une prévision à <code>connect-src</code>, et <code>worker-src 'self'</code> si les longs calculs doivent tourner à côté de la page\u00a0; sinon ils avancent par petits morceaux.",
    requests: 'Ce qu’il demande',
    asked: [
      ['Ses propres parties', 'Au dossier copié, quand elles sont montrées.'],
      ['Eaux, profil de bateau', 'Seulement aux adresses que vous donnez.'],
      ['Images de carte', 'Seulement en pressant le bouton du plan, ou si vous donnez <code>tiles</code>.'],
      ['Prévision', 'Seulement en pressant le bouton, à l’adresse que vous donnez.'],
      ['Autre chose', 'Rien\u00a0: pas de comptage de visites, pas de cookies, pas de polices.'],
    ],
    keeps:
      'Ce qui est saisi reste dans le navigateur du lecteur, sous l’adresse de votre site\u00a0; <code>keep="none"</code> ne garde rien.',
    frame: 'Dans un cadre à sa hauteur',
    frameText:
      'Là où seul un cadre peut être placé, la page encadrée dit sa hauteur\u00a0: le planificateur avec <code>tell-size</code>, tout autre élément avec le premier script. Le second va sur la page autour. La <a href="/gallery/">galerie</a> le fait avec ces lignes mêmes.',
    frameworks: 'Avec un framework',
    frameworksText:
      'Le paquet a des modules et des types pour les outils d’assemblage. Les valeurs simples passent en attributs, les objets en propriétés\u00a0; les événements sont ceux de la référence.',
    promise: 'Ce qui ne change pas',
    promiseText: [
      'Les versions sont numérotées majeure.mineure.correctif. Attributs, propriétés, méthodes, événements avec leurs détails, slots, parts, variables CSS et formes des fichiers sont promis\u00a0: ce qui casse l’un d’eux relève le premier nombre, et la <a href="/changes/">liste des changements</a> dit que faire.',
      'Les fichiers et liens d’anciennes versions restent lisibles pour de bon. Les chiffres ne sont pas promis\u00a0: un meilleur modèle change les réponses, et la liste dit pourquoi.',
      'Restez à une version par page. Une deuxième laisse la première en charge et le dit dans la console.',
    ],
    gallery:
      '<a href="/gallery/">Des pages qui portent les éléments</a>\u00a0: un club, un loueur, un chantier, une page sombre et une colonne étroite.',
    reference: 'Référence',
    referenceText: 'Faite à partir du code source à chaque construction.',
    english: 'Les descriptions sont en anglais.',
    kinds: {
      attributes: 'Attributs et propriétés',
      methods: 'Méthodes',
      events: 'Événements',
      slots: 'Slots',
      parts: 'Parts',
      cssProperties: 'Variables CSS',
    },
    ofAll: 'De tous les éléments',
    attribute: 'attribut',
    property: 'propriété seulement',
    readOnly: 'lecture seule',
    usually: 'sinon',
    defaultSlot: 'sans nom',
  },
  gallery: {
    title: 'Galerie d’exemples',
    description:
      'Des éléments de Homeleg sur des pages inventées d’un club, d’un loueur et d’un chantier, sombre et en colonne étroite.',
    heading: 'Des pages qui les portent',
    lead: 'Les deux premières sont des pages entières d’autrui, dans un cadre à leur propre hauteur\u00a0; les autres sont des éléments sur cette page. Clubs, entreprises, bateaux et eaux n’existent pas.',
    back: '<a href="/embed/">Choisir et copier le vôtre</a>',
    snippet: 'L’extrait',
    loading: 'Se charge quand il devient visible, et demande JavaScript.',
    framed: 'Se charge quand il devient visible, et demande JavaScript et, comme page d’autrui, le réseau.',
    alone: (name: string) => `${name}\u00a0: la page seule`,
    source: 'La page dans le cadre',
    around: 'Le cadre sur la page autour',
    invented: 'Une page inventée, pour montrer comment un élément s’y place. Il n’y a personne derrière.',
    booking: {
      button: 'Réserver ce bateau',
      booked: 'Inventé\u00a0: rien n’a été envoyé. Votre propre serveur recevrait maintenant\u00a0:',
    },
    pages: {
      club: [
        'Un club',
        'La page d’un club dans un cadre, avec ses couleurs et une règle de la maison\u00a0: la moitié du carburant est gardée. Les règles d’une page ne font que resserrer celles de l’utilisateur.',
      ],
      desk: [
        'Un loueur',
        'Une page de réservation dans un cadre\u00a0: bateau, poids, jauge, heures. Le formulaire envoie la sortie dès qu’il y a une réponse.',
      ],
      dealer: ['Un chantier', 'Quel moteur pour quel équipage, sur une coque, à côté de l’offre.'],
      dark: ['Une page sombre', 'L’élément suit <code>color-scheme</code>\u00a0; rien d’autre n’est nécessaire.'],
      narrow: [
        'Une colonne étroite',
        'Une liste en 280 pixels à côté d’un article. Elle suit sa propre largeur, pas celle de l’écran.',
      ],
    },
    club: {
      name: 'Notre club nautique',
      text: 'Avant de larguer\u00a0: la journée tient-elle dans le réservoir\u00a0?',
    },
    desk: { name: 'Bateaux à louer', text: 'À remplir ensemble au comptoir.' },
    dealer: { name: 'Bateau ouvert, 4,2 m', text: 'Pour lacs et estuaires. Essai sur demande au chantier.' },
    dark: { name: 'Journal du soir', text: 'Qu’est-ce qui conviendrait à notre usage\u00a0?' },
    narrow: {
      name: 'Armement',
      text: 'La saison commence sur la remorque. Pneus, feux, sangles, puis le bateau. Une demi-heure avec la liste épargne le remorquage. Imprimez-la une fois et gardez-la avec les papiers.',
    },
  },
};
