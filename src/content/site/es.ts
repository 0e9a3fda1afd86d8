import type { SiteTexts } from './en.ts';

export const siteTexts: SiteTexts = {
  language: 'Idioma',
  skip: 'Ir al contenido',
  pages: 'Páginas',
  places: {
    '/': 'Planificador',
    '/trials/': 'Pruebas',
    '/engines/': 'Motores',
    '/suit/': 'Qué sirve',
    '/hire/': 'Alquiler',
    '/waters/': 'Aguas',
    '/checklists/': 'Listas',
    '/method/': 'Método (en inglés)',
    '/search/': 'Buscar',
  },
  foot: {
    caution:
      '<strong>Para preparar la travesía en tierra, no para navegar.</strong> Primero están la placa y el manual del barco, las normas locales y la práctica para la que se tiene título o formación. Decide el patrón.',
    model:
      'Homeleg calcula con modelos. Un barco que nadie ha medido puede apartarse mucho de ellos; por eso las respuestas llevan un margen.',
    kept: 'Lo que se escribe se queda en este dispositivo. Los barcos, motores y aguas que vienen con el sitio son inventados.',
    method: '<a href="/method/">Cómo se calcula la respuesta</a> (en inglés), y dónde se queda corta.',
    embed: '<a href="/embed/">Ponerlo en el propio sitio</a>, y <a href="/gallery/">páginas que lo llevan</a>.',
  },
  previewAlt: 'Una barra de lleno a vacío: la ida, la vuelta y la parte que se guarda',
  search: {
    title: 'Buscar',
    description:
      'Encontrar un punto de una lista o un pasaje. La búsqueda se hace en este dispositivo, también sin red.',
    site: 'Sitio',
    label: 'Buscar en estas páginas',
    words: 'Palabras que buscar',
    button: 'Buscar',
    hint: 'Se hace en este dispositivo, también sin red; nada de lo que se escribe sale de él.',
    noScript: 'Buscar necesita JavaScript. Todo está en estas páginas:',
    all: 'Todas las páginas',
  },
  home: {
    description:
      'Con este barco, esta carga y este depósito: ¿se llega allí y se vuelve con algo de sobra? Un planificador de travesías para barcos abiertos pequeños a motor, de gasolina o eléctricos.',
    heading: '¿Ida y vuelta, con algo de sobra?',
    lead: 'Decir cuál es el barco, quiénes van y cuánto hay en el depósito o la batería. Homeleg calcula si la travesía cabe, con cuánta certeza, y qué cambiar si no.',
    loading:
      'El planificador se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    reading: 'Cómo leer la respuesta',
    bar: [
      ['Ida', 'Con la carga, los sitios, el viento y la corriente indicados.'],
      ['Vuelta', 'Más ligero por el combustible gastado, con el viento y la corriente que haya entonces.'],
      ['Guardado', 'Un tercio, o más si se elige. El plan no puede tocarlo.'],
    ],
    answers: 'Tres respuestas',
    measure:
      'Un barco que nadie ha medido lleva un margen ancho, y necesita más en el depósito para la primera respuesta. Tres pruebas con reloj e indicador de combustible lo estrechan. <a href="/trials/">Medir el barco</a>.',
    also: [
      [
        'Listas de comprobación',
        'Desde el <a href="/checklists/weather/">tiempo</a>, pasando por <a href="/checklists/before-launch/">antes de botar</a>, hasta el <a href="/checklists/overdue/">retraso</a>, para la persona en tierra. <a href="/checklists/">Todas las listas</a> se pueden marcar en el teléfono o imprimir.',
      ],
      [
        'Puesto de alquiler',
        'Dos pesos y un indicador de combustible: <a href="/hire/">una comprobación de reserva para entregar</a>, con la hora de estar de vuelta.',
      ],
      [
        'Método',
        '<a href="/method/">Qué se calcula y cómo</a> (en inglés), de qué publicaciones, y dónde se queda corto.',
      ],
      [
        'Sin red',
        'Tras la primera visita todas las páginas funcionan sin conexión, y el menú del navegador puede instalarlas como una aplicación. Solo las imágenes del mapa de calles no se guardan nunca en el dispositivo.',
      ],
    ],
  },
  engines: {
    title: 'Cargas y motores',
    description:
      'Un barco, tripulaciones de una a cuatro personas, varios motores, hélices, depósitos y baterías: cuál planea, a qué velocidad, con qué consumo, hasta dónde, y qué queda de sobra.',
    heading: 'Cargas y motores',
    lead: 'Un barco con tripulaciones de una a cuatro personas frente a los motores, hélices, depósitos y baterías en que se piensa: si planea, a qué velocidad, con qué consumo, hasta dónde, y qué puede subir aún a bordo.',
    loading:
      'La tabla se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    reading: 'Cómo leerla',
    paragraphs: [
      'Cada cifra vale para barcos como este; entre paréntesis está dónde se hallan ocho de cada diez. Un barco que alguien ha medido lleva un margen más estrecho: abrir su archivo encima de la tabla. La placa del barco va antes que cualquier cifra de aquí.',
      '¿Se busca un barco y no un motor? <a href="/suit/">Decir para qué es</a>, y ver cuál serviría.',
    ],
  },
  suit: {
    title: 'Qué serviría',
    description:
      'Decir quiénes van, hasta dónde, por qué agua y a qué velocidad, y ver qué barco, motor, hélice y depósito o batería serviría, y por qué los demás quedan fuera.',
    heading: '¿Qué serviría?',
    lead: 'Decir quiénes van, hasta dónde se quiere ir, a qué velocidad y por qué agua. Cada barco de ejemplo se prueba con cada motor, depósito y batería; lo que no sirve dice por qué.',
    loading:
      'La búsqueda se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    asks: 'Qué pide de un barco',
    points: [
      'Se respeta la placa: personas, peso, potencia y peso del motor.',
      'La velocidad deseada se mantiene con todos a bordo, y el barco pasa el resalto hasta ella.',
      'Ida y vuelta con un tercio guardado, y de vuelta con algo de sobra incluso en un mal día.',
      'Lo que hay que llevar a mano se puede llevar.',
    ],
    start:
      'Tomarlo como comienzo. <a href="/engines/">Comparar motores y cargas</a> en el barco en que se piensa, y probar uno antes de comprarlo o alquilarlo.',
  },
  trials: {
    title: 'Pruebas',
    description:
      'Medir el barco: pruebas escritas o leídas de una traza, la curva de consumo que dan, con cuánta certeza, y un perfil del barco para el planificador.',
    heading: 'Medir el barco',
    lead: 'Escribir lo que dijeron la corredera, el caudalímetro o el amperímetro, o abrir una traza. Cada prueba estrecha el margen de la curva de consumo; el resultado es un perfil del barco con el que trabaja el planificador.',
    loading:
      'La página de pruebas se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    how: 'Cómo se hace una prueba',
    points: [
      'Una posición del gas, mantenida hasta que la velocidad sea constante; después, un minuto o más en línea recta.',
      'Después lo mismo en sentido contrario, para que la corriente se anule. Cuatro pasadas son mejor que dos.',
      'Nadie cambia de sitio. Anotar quién va dónde, y qué hay en el depósito.',
      'Despacio, en el resalto y planeando: una curva se conoce donde se probó, y se supone en lo demás.',
      'Cambiar la carga al menos una vez en el día.',
    ],
    lookout:
      'Un vigía además de quien anota, cordón de hombre al agua puesto, lejos de bañistas, fondeos y otros barcos; los límites de velocidad valen también para las pruebas.',
  },
  hire: {
    title: 'Puesto de alquiler',
    description:
      'Un puesto de alquiler en el navegador: poner la mañana una vez, comprobar cada alquiler en seis respuestas, entregar una hoja con código, y ver quién está fuera y quién va con retraso.',
    heading: 'Puesto de alquiler',
    lead: 'Poner la mañana una vez. Comprobar cada alquiler en seis respuestas, entregar una hoja, y ver quién está fuera y quién va con retraso. Todo se queda en este navegador y funciona sin red.',
    loading:
      'El puesto de alquiler se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    sections: [
      [
        'Qué hace, y qué no',
        'La respuesta viene del mismo cálculo que la del <a href="/">planificador</a>. Solo puede ser un sí claro mientras alguien responda de la flota, la mañana esté puesta y en fecha, se haya leído la placa y se haya medido cuánto hay en el barco. La avería del motor, un cambio de tiempo y lo que haga el cliente no están en las cifras.',
        'Las normas de alquiler, los códigos de práctica y los seguros dicen qué hay que mostrar, escribir y firmar en cada lugar. Van antes que esta página. Una página cerrada no puede avisar de un barco con retraso: mantenerla abierta, y un reloj al lado.',
      ],
      [
        'Qué guarda el puesto',
        'Nada sale de este ordenador. No hacen falta nombres. Flota, mañana, alquileres y reposiciones se guardan en este navegador; se pueden guardar en un archivo, cargar en otro ordenador y borrar.',
      ],
      [
        'Una flota propia',
        'Los barcos se pueden escribir, o venir en un archivo: quién responde de ellos, desde cuándo y hasta cuándo; cada barco con su placa, la velocidad con que se alquila, y cifras de un barco como él, cifras propias o el perfil de sus <a href="/trials/">pruebas</a>. Guardar la flota inventada como archivo para ver cómo se escribe uno. Las reposiciones anotadas al regreso cuentan como indicio de lo que gasta ese barco.',
      ],
    ],
  },
  waters: {
    title: 'Aguas locales',
    description:
      'Dibujar y comprobar un archivo de aguas locales: tierra, bajos, límites de velocidad, zonas prohibidas, desembarcaderos, lugares de corriente y rutas fijas. Y comprobar un archivo de flota.',
    heading: 'Dibujar las aguas locales',
    lead: 'Tierra, bajos, límites de velocidad, zonas prohibidas, desembarcaderos, corrientes y rutas fijas del propio lugar, en un mapa o en tablas. Los errores se muestran con su lugar en el archivo, y se señala lo que parece raro.',
    loading:
      'La página de aguas locales se está cargando. Funciona en el navegador y necesita JavaScript; las <a href="/checklists/">listas de comprobación</a> funcionan sin él.',
    fleet: 'Un archivo de flota',
    fleetLead:
      'Barcos, rutas fijas y fechas de un alquiler, comprobados por el mismo lector que en el mostrador. Nada de lo escrito aquí se guarda hasta guardar el archivo; el mostrador guarda el suyo.',
    sections: [
      [
        'Qué son estas aguas y qué no son',
        'Un archivo de aguas locales dice al <a href="/">planificador</a> dónde estorban tierra, profundidad y reglas. No es una carta náutica. Quien lo dibuja responde de él: hay que tomarlo de cartas y avisos vigentes, mirarlo en el agua y decir hasta cuándo vale. Después de ese día ninguna salida en él pasa de «no es bastante seguro».',
        'Dentro del recuadro, lo que no está dibujado como tierra cuenta como agua, bastante honda y abierta a todos. Por eso hay que dibujar toda la orilla dentro del recuadro, o reducir el recuadro.',
      ],
      [
        'El archivo',
        'Es GeoJSON sin más (RFC 7946): grados WGS 84, primero la longitud. Cada elemento tiene un <code>kind</code> y un <code>name</code>; lo que aquí no se conoce queda como está. <code>responsible</code>, <code>surveyed</code> y <code>validUntil</code> están junto a <code>features</code>. Otro sitio pone el archivo donde su elemento lo encuentra: <code>&lt;homeleg-planner waters="/nuestra-bahia.geojson"&gt;</code>.',
      ],
    ],
    schemas: 'Esquemas para editores y programas',
    schemasLead: 'JSON Schema, versión 2020-12, hechos de lo que comprueban los lectores de este sitio:',
    schemaList: [
      ['trip', 'una salida'],
      ['profile', 'un barco medido'],
      ['waters', 'aguas locales'],
      ['fleet', 'la flota de un alquiler'],
      ['saved', 'salidas y barcos guardados'],
      ['desk', 'todo lo que guardó un alquiler'],
    ],
    schemaUse:
      'Con <code>"$schema": "…/schemas/fleet.json"</code> al principio de un archivo, un editor ayuda al escribir; los lectores lo dejan estar. Los archivos dicen su <code>version</code>: un lector toma las que conoce y rechaza otras diciendo por qué. Dentro de una versión se añaden campos, ninguno cambia de sentido.',
    schemaLimits:
      'Lo que un esquema no puede decir lo comprueba solo el lector: que un contorno cierre y el último día siga al levantamiento, que un id esté una sola vez y se conozca donde se nombra, que las horas suban, que el calendario tenga ese día y cómo una cifra limita a otra.',
  },
  checklists: {
    title: 'Listas de comprobación',
    description:
      'Listas cortas para barcos abiertos pequeños, desde el tiempo hasta la vuelta. Marcarlas en un teléfono, imprimir cada una en una página.',
    lead: 'Listas cortas para barcos abiertos pequeños, desde el tiempo hasta la vuelta. Marcarlas en el teléfono, o imprimir cada una en una página y llevarla en el barco. Los puntos que dependen del barco, la tripulación o el tiempo siguen la travesía del <a href="/">planificador</a>, si la hay.',
    points: (count) => (count === 1 ? '1 punto' : `${count} puntos`),
    law: 'La ley local decide lo que hay que llevar y hacer, y varía de un país a otro y de un puerto a otro. Donde una lista no concuerde con la ley, la placa del barco, el manual del fabricante o la práctica para la que se tiene título o formación, la lista no vale.',
    all: 'Todas las listas',
    boat: 'Barco',
    skipper: 'Patrón',
    when: 'Fecha y hora',
    next: 'Lista siguiente:',
  },
  embed: {
    title: 'En el propio sitio',
    description:
      'El planificador, una comprobación de reserva, una lista o una tabla de motores en la propia página: elegir, mirar, copiar. Con cada atributo, evento y color de cada elemento.',
    heading: 'En el propio sitio',
    lead: 'Un club, un alquiler o un astillero puede mostrar cualquiera de estos elementos en una página suya. Se elige uno, se mira y se copian dos líneas. No se carga nada de aquí ni de otros sin que se pida.',
    build: 'Elegir y copiar',
    element: 'Elemento',
    folder: 'Carpeta de los scripts en el propio sitio',
    lang: 'Idioma',
    langOfPage: 'el de la página',
    scheme: 'Claro u oscuro',
    schemes: { page: 'como la página', light: 'claro', dark: 'oscuro' },
    accent: 'Color de líneas y botones',
    own: 'como viene',
    attributes: 'Sus atributos',
    unset: 'sin poner',
    markup: 'En la página',
    sheet: 'En la hoja de estilo',
    copy: 'Copiar',
    copied: 'Copiado.',
    notCopied: 'No se pudo copiar. El texto está seleccionado: cópiese con el teclado.',
    live: 'Así se ve',
    told: 'Lo que ha dicho a la página',
    nothingTold: 'Nada todavía. Cambie algo en el elemento.',
    noScript: 'Elegir necesita JavaScript. Esto pone el planificador en una página:',
    howTo: 'Cómo ponerlo allí',
    steps: [
      'Construir el sitio o tomar el paquete: <code>npm run build</code> deja la carpeta <code>dist/embed</code>. Copiarla al propio sitio, por ejemplo como <code>/embed/</code>.',
      'Poner las dos líneas donde deba estar el elemento.',
      'Dar las aguas, los barcos y las reglas propias con los atributos y propiedades de abajo. Lo que viene con él es inventado.',
      'Pensar de qué responde ahora la página: quien muestra una respuesta muestra también sus advertencias. Son parte de cada elemento; no se ocultan.',
    ],
    policy: 'Política de contenido',
    policyText:
      "Funciona bajo esta política estricta sin excepciones: sin scripts ni estilos en la página, sin <code>eval</code>. La dirección de imágenes de mapa propias va en <code>img-src</code>, la de un fichero de aguas o una previsión en <code>connect-src</code>, y <code>worker-src 'self'</code> si los cálculos largos deben ir junto a la página; sin ello van en trozos pequeños.",
    requests: 'Lo que pide',
    asked: [
      ['Sus propias partes', 'A la carpeta copiada, cuando se muestran.'],
      ['Aguas, perfil del barco', 'Solo a las direcciones que se den.'],
      ['Imágenes de mapa', 'Solo al pulsar el botón del callejero, o si se da <code>tiles</code>.'],
      ['Previsión', 'Solo al pulsar el botón, a la dirección que se dé.'],
      ['Cualquier otra cosa', 'Nada: sin contar visitas, sin cookies, sin fuentes.'],
    ],
    keeps:
      'Lo que se escribe se queda en el navegador del lector, bajo la dirección del propio sitio; <code>keep="none"</code> no guarda nada.',
    frame: 'En un marco de su altura',
    frameText:
      'Donde solo cabe un marco, la página enmarcada dice su altura: el planificador con <code>tell-size</code>, cualquier otro elemento con el primer script. El segundo va en la página que lo rodea. La <a href="/gallery/">galería</a> lo hace con estas mismas líneas.',
    frameworks: 'Con un framework',
    frameworksText:
      'El paquete trae módulos y tipos para empaquetadores. Los valores simples entran como atributos, los objetos como propiedades; los eventos son los de la referencia.',
    promise: 'Lo que no cambia',
    promiseText: [
      'Las versiones se numeran mayor.menor.parche. Atributos, propiedades, métodos, eventos con sus detalles, slots, parts, variables CSS y formas de los ficheros están prometidos: lo que rompe uno de ellos sube el primer número, y la <a href="/changes/">lista de cambios</a> dice qué hacer.',
      'Los ficheros y enlaces de versiones anteriores se leen para siempre. Las cifras no se prometen: un modelo mejor cambia respuestas, y la lista dice por qué.',
      'Quédese en una versión por página. Una segunda deja a la primera al mando y lo dice en la consola.',
    ],
    gallery:
      '<a href="/gallery/">Páginas que llevan los elementos</a>: un club, un alquiler, un astillero, una página oscura y una columna estrecha.',
    reference: 'Referencia',
    referenceText: 'Hecha del código fuente en cada construcción.',
    english: 'Las descripciones están en inglés.',
    kinds: {
      attributes: 'Atributos y propiedades',
      methods: 'Métodos',
      events: 'Eventos',
      slots: 'Slots',
      parts: 'Parts',
      cssProperties: 'Variables CSS',
    },
    ofAll: 'De todos los elementos',
    attribute: 'atributo',
    property: 'solo propiedad',
    readOnly: 'solo lectura',
    usually: 'si no',
    defaultSlot: 'sin nombre',
  },
  gallery: {
    title: 'Galería',
    description:
      'Elementos de Homeleg en páginas inventadas de un club, un alquiler y un astillero, a oscuras y en columna estrecha.',
    heading: 'Páginas que los llevan',
    lead: 'Las dos primeras son páginas enteras de otros, en un marco a su propia altura; las demás son elementos en esta página. Clubes, empresas, barcos y aguas no existen.',
    back: '<a href="/embed/">Elegir y copiar el propio</a>',
    snippet: 'El fragmento',
    loading: 'Se carga cuando llega a la vista, y necesita JavaScript.',
    framed: 'Se carga cuando llega a la vista, y necesita JavaScript y, como página de otros, la red.',
    alone: (name: string) => `${name}: la página sola`,
    source: 'La página en el marco',
    around: 'El marco en la página que lo rodea',
    invented: 'Una página inventada, para mostrar cómo se coloca un elemento en ella. No hay nadie detrás.',
    booking: {
      button: 'Reservar este barco',
      booked: 'Inventado: no se ha enviado nada. El servidor propio recibiría ahora:',
    },
    pages: {
      club: [
        'Un club',
        'La página de un club en un marco, con sus colores y una regla de la casa: se guarda la mitad del combustible. Las reglas de una página solo endurecen las del usuario.',
      ],
      desk: [
        'Un alquiler',
        'Una página de reserva en un marco: barco, pesos, indicador de combustible, horas. El formulario envía la salida en cuanto hay respuesta.',
      ],
      dealer: ['Un astillero', 'Qué motor para qué tripulación, en un casco, junto a la oferta.'],
      dark: ['Una página oscura', 'El elemento sigue <code>color-scheme</code>; no hace falta más.'],
      narrow: [
        'Una columna estrecha',
        'Una lista en 280 píxeles junto a un artículo. Se rige por su propio ancho, no por el de la pantalla.',
      ],
    },
    club: { name: 'Nuestro club náutico', text: 'Antes de soltar amarras: ¿cabe el día en el depósito?' },
    desk: { name: 'Barcos de alquiler', text: 'Se rellena juntos en el mostrador.' },
    dealer: { name: 'Barco abierto, 4,2 m', text: 'Para lagos y estuarios. Prueba a petición en el astillero.' },
    dark: { name: 'Diario de la tarde', text: '¿Qué serviría para el uso que le damos?' },
    narrow: {
      name: 'Puesta a punto',
      text: 'La temporada empieza en el remolque. Ruedas, luces, cinchas, luego el barco. Media hora con la lista ahorra el remolque de vuelta. Se imprime una vez y se guarda con los papeles.',
    },
  },
};
