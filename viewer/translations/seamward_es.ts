<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>Seamward</source>
        <translation>Seamward</translation>
    </message>
    <message>
        <source>This job cannot be opened. What is wrong, and where:</source>
        <translation>Este trabajo no se puede abrir. Qué está mal, y dónde:</translation>
    </message>
    <message>
        <source>The program failed. What it says:</source>
        <translation>El programa falló. Lo que dice:</translation>
    </message>
</context>
<context>
    <name>catalog</name>
    <message>
        <source>1/2 in hardware cloth, 19 gage</source>
        <translation>malla soldada de 1/2 pulg, calibre 19</translation>
    </message>
    <message>
        <source>1/3 in hardware cloth</source>
        <translation>malla soldada de 1/3 pulg</translation>
    </message>
    <message>
        <source>1/4 in hardware cloth</source>
        <translation>malla soldada de 1/4 pulg</translation>
    </message>
    <message>
        <source>1/4 in hardware cloth, 23 gage</source>
        <translation>malla soldada de 1/4 pulg, calibre 23</translation>
    </message>
    <message>
        <source>1/4 in hardware cloth, code weight</source>
        <translation>malla soldada de 1/4 pulg, del peso que pide el código</translation>
    </message>
    <message>
        <source>1/8 in hardware cloth</source>
        <translation>malla soldada de 1/8 pulg</translation>
    </message>
    <message>
        <source>1/8 in hardware cloth, 27 gage</source>
        <translation>malla soldada de 1/8 pulg, calibre 27</translation>
    </message>
    <message>
        <source>1/8 in hardware cloth, heavy</source>
        <translation>malla soldada de 1/8 pulg, gruesa</translation>
    </message>
    <message>
        <source>14 mesh</source>
        <translation>malla 14</translation>
    </message>
    <message>
        <source>14-mesh screen</source>
        <translation>tela de alambre, malla 14</translation>
    </message>
    <message>
        <source>14-mesh screen, 3 ft x 7 ft</source>
        <translation>tela de alambre, malla 14, 3 x 7 pies</translation>
    </message>
    <message>
        <source>16 mesh, insect screen</source>
        <translation>malla 16, mosquitero</translation>
    </message>
    <message>
        <source>16-mesh insect screen</source>
        <translation>mosquitero, malla 16</translation>
    </message>
    <message>
        <source>16-mesh insect screen, 3 ft x 7 ft</source>
        <translation>mosquitero, malla 16, 3 x 7 pies</translation>
    </message>
    <message>
        <source>18 mesh</source>
        <translation>malla 18</translation>
    </message>
    <message>
        <source>18 x 16 mesh, insect screen</source>
        <translation>malla 18 x 16, mosquitero</translation>
    </message>
    <message>
        <source>20 mesh, stainless</source>
        <translation>malla 20, inoxidable</translation>
    </message>
    <message>
        <source>20-mesh stainless screen</source>
        <translation>tela inoxidable, malla 20</translation>
    </message>
    <message>
        <source>20-mesh stainless screen, 1 ft x 3 ft</source>
        <translation>tela inoxidable, malla 20, 1 x 3 pies</translation>
    </message>
    <message>
        <source>40 to 100 F (4 to 38 C), dry until it has cured</source>
        <translation>40 a 100 F (4 a 38 C), en seco hasta que cure</translation>
    </message>
    <message>
        <source>40 to 90 F (4 to 32 C), no frost for a day</source>
        <translation>40 a 90 F (4 a 32 C), sin heladas por un día</translation>
    </message>
    <message>
        <source>60 to 90 F (16 to 32 C) for can and surface; damp is welcome, standing water is not</source>
        <translation>60 a 90 F (16 a 32 C) para el bote y la superficie; humedad sí, agua encharcada no</translation>
    </message>
    <message>
        <source>A rated wall or ceiling takes a listed system only; ordinary foam and sealant spoil its rating.</source>
        <translation>Un muro o techo contra fuego solo admite un sistema aprobado; la espuma y el sellador comunes le quitan su clasificación.</translation>
    </message>
    <message>
        <source>A seal that does not let the water down floods the room; local plumbing codes say which ones may be used.</source>
        <translation>Un sello que no deja bajar el agua inunda el cuarto; los códigos locales de plomería dicen cuáles se pueden usar.</translation>
    </message>
    <message>
        <source>American cockroach</source>
        <translation>Cucaracha americana</translation>
    </message>
    <message>
        <source>Argentine ant</source>
        <translation>Hormiga argentina</translation>
    </message>
    <message>
        <source>Attic: it can be hotter than 140 F (60 C): go early, drink, let somebody know; step on framing only, look out for nails, wires and lights</source>
        <translation>Ático: puede pasar de 140 F (60 C): vaya temprano, tome agua, avise a alguien; pise solo la madera estructural, cuidado con clavos, cables y lámparas</translation>
    </message>
    <message>
        <source>Bark scorpion</source>
        <translation>Alacrán de corteza</translation>
    </message>
    <message>
        <source>Bat</source>
        <translation>Murciélago</translation>
    </message>
    <message>
        <source>Bats are protected in many states, and any bite is a case for a doctor: no bare hands, and ask the state&apos;s wildlife agency first.</source>
        <translation>Los murciélagos están protegidos en muchos estados, y cualquier mordida es para el médico: nada de manos desnudas, y pregunte primero a la agencia estatal de fauna.</translation>
    </message>
    <message>
        <source>Be sure of the kind: nests, eggs and young of native birds are protected by law and stay until they are empty.</source>
        <translation>Asegúrese de la especie: los nidos, huevos y crías de aves nativas están protegidos por ley y se quedan hasta que estén vacíos.</translation>
    </message>
    <message>
        <source>Bed it in sealant and screw it down</source>
        <translation>Asiéntelo en sellador y atorníllelo</translation>
    </message>
    <message>
        <source>Bend its leaf open until the door or lid presses it all along; it must close without force</source>
        <translation>Abra la lengüeta doblándola hasta que la puerta o tapa la presione en todo su largo; debe cerrar sin forzar</translation>
    </message>
    <message>
        <source>Black widow</source>
        <translation>Viuda negra</translation>
    </message>
    <message>
        <source>Both shoulders stay between the rails; move the ladder rather than lean out</source>
        <translation>Los dos hombros quedan entre los largueros; mueva la escalera en vez de estirarse</translation>
    </message>
    <message>
        <source>By its name this is at an electrical box or wire: power off and tested before you touch it, no metal wool in or near boxes, panels and bare wires</source>
        <translation>Por su nombre está en una caja o cable eléctrico: corriente cortada y comprobada antes de tocar, nada de lana metálica dentro o cerca de cajas, tableros y cables pelados</translation>
    </message>
    <message>
        <source>By its name this is at gas, a flue or an appliance: lines and valves are not moved, no foam and no plastic near a flue, and the appliances are tested afterwards</source>
        <translation>Por su nombre está en gas, un tiro o un aparato: no se mueven líneas ni válvulas, nada de espuma ni plástico cerca de un tiro, y después se prueban los aparatos</translation>
    </message>
    <message>
        <source>Carpenter ant</source>
        <translation>Hormiga carpintera</translation>
    </message>
    <message>
        <source>Clean and dry the joint; cut out loose and old sealant</source>
        <translation>Limpie y seque la junta; corte el sellador suelto y viejo</translation>
    </message>
    <message>
        <source>Clean and dry the joint; cut out loose and old sealant, silicone wholly</source>
        <translation>Limpie y seque la junta; corte el sellador suelto y viejo, el silicón por completo</translation>
    </message>
    <message>
        <source>Clean and dry the opening; cut out loose and old sealant</source>
        <translation>Limpie y seque la abertura; corte el sellador suelto y viejo</translation>
    </message>
    <message>
        <source>Clean pipe and wall</source>
        <translation>Limpie el tubo y el muro</translation>
    </message>
    <message>
        <source>Clean the frame; take away nests only when nobody lives in them</source>
        <translation>Limpie el marco; quite nidos solo cuando nadie viva en ellos</translation>
    </message>
    <message>
        <source>Clean the joint; pack copper or stainless wool tightly, 1 in deep, to below the depth of the bead</source>
        <translation>Limpie la junta; meta lana de cobre o inoxidable bien apretada, 1 pulg de fondo, hasta debajo de la profundidad del cordón</translation>
    </message>
    <message>
        <source>Clean the joint; pack mineral wool behind the bead where the system asks for it</source>
        <translation>Limpie la junta; meta lana mineral detrás del cordón donde el sistema lo pida</translation>
    </message>
    <message>
        <source>Clean the opening</source>
        <translation>Limpie la abertura</translation>
    </message>
    <message>
        <source>Clean the opening and brush out dust</source>
        <translation>Limpie la abertura y cepille el polvo</translation>
    </message>
    <message>
        <source>Clean the opening and wet it a little; protect what stands below</source>
        <translation>Limpie la abertura y humedézcala un poco; proteja lo que está abajo</translation>
    </message>
    <message>
        <source>Clean the surface and lay the gasket without a gap at its ends</source>
        <translation>Limpie la superficie y ponga el empaque sin hueco en las puntas</translation>
    </message>
    <message>
        <source>Clean the surface around the opening</source>
        <translation>Limpie la superficie alrededor de la abertura</translation>
    </message>
    <message>
        <source>Clear the weep of mortar and dirt; water must run out of it</source>
        <translation>Limpie el lloradero de mortero y tierra; el agua debe poder salir</translation>
    </message>
    <message>
        <source>Close the two halves of the ring around the pipe and press it to the wall; it must sit tight</source>
        <translation>Cierre las dos mitades del anillo alrededor del tubo y presiónelo contra el muro; debe quedar justo</translation>
    </message>
    <message>
        <source>Crawl space: a second person outside, air and light brought in, look for wires, water, gas and animals before you go in</source>
        <translation>Espacio bajo el piso: otra persona afuera, aire y luz adentro, busque cables, agua, gas y animales antes de entrar</translation>
    </message>
    <message>
        <source>Cut a collar of sheet metal in two halves that fit the flue closely; no foam, no plastic, no wood</source>
        <translation>Corte un collarín de lámina en dos mitades que ajusten al tiro; nada de espuma, plástico ni madera</translation>
    </message>
    <message>
        <source>Cut edges are sharp; look for wires and pipes before you drill.</source>
        <translation>Los bordes cortados tienen filo; busque cables y tubos antes de taladrar.</translation>
    </message>
    <message>
        <source>Cut sheet metal at least 1 in wider at every edge; around a pipe in two halves that overlap</source>
        <translation>Corte la lámina 1 pulg más ancha en cada borde por lo menos; alrededor de un tubo, en dos mitades que se traslapen</translation>
    </message>
    <message>
        <source>Cut the mesh 1 in wider at every edge and fold sharp edges over</source>
        <translation>Corte la malla 1 pulg más ancha en cada borde y doble los filos</translation>
    </message>
    <message>
        <source>Cut the new one between the jambs, bed it in sealant and screw it down</source>
        <translation>Corte el nuevo a la medida entre las jambas, asiéntelo en sellador y atorníllelo</translation>
    </message>
    <message>
        <source>Desert centipede</source>
        <translation>Ciempiés del desierto</translation>
    </message>
    <message>
        <source>Desert hairy scorpion</source>
        <translation>Alacrán velludo del desierto</translation>
    </message>
    <message>
        <source>Do not paint it, and clean it every year: dust closes fine mesh</source>
        <translation>No la pinte, y límpiela cada año: el polvo tapa la malla fina</translation>
    </message>
    <message>
        <source>Do not reach where you cannot see; be sure of the kind before you come near a snake.</source>
        <translation>No meta la mano donde no ve; asegúrese de la especie antes de acercarse a una víbora.</translation>
    </message>
    <message>
        <source>Droppings and nests: no dry sweeping; wet them with disinfectant, wear gloves and a respirator.</source>
        <translation>Excremento y nidos: no barrer en seco; mójelos con desinfectante, use guantes y respirador.</translation>
    </message>
    <message>
        <source>Droppings: no dry sweeping; wet them with disinfectant, wear gloves and a respirator</source>
        <translation>Excremento: no barrer en seco; mójelo con desinfectante, use guantes y respirador</translation>
    </message>
    <message>
        <source>Dry mix and dust of masonry hold silica, and wet mortar burns the skin.</source>
        <translation>La mezcla seca y el polvo de mampostería llevan sílice, y el mortero fresco quema la piel.</translation>
    </message>
    <message>
        <source>Earwig</source>
        <translation>Tijerilla</translation>
    </message>
    <message>
        <source>Fill half of the opening; the foam grows</source>
        <translation>Llene la mitad de la abertura; la espuma crece</translation>
    </message>
    <message>
        <source>Fill the trap with water: a dry trap is open to the sewer</source>
        <translation>Llene la trampa con agua: una trampa seca queda abierta al drenaje</translation>
    </message>
    <message>
        <source>Flue: 1 in from metal flues and 2 in from masonry chimneys to anything that burns, or as the label of the flue says.</source>
        <translation>Tiro: 1 pulg de los tiros de metal y 2 pulg de las chimeneas de mampostería a todo lo que arde, o lo que diga la etiqueta del tiro.</translation>
    </message>
    <message>
        <source>Foam roof: its skin dents and leaks: soft soles, boards to kneel on, seal every scratch</source>
        <translation>Techo de espuma: su piel se marca y gotea: suela blanda, tablas para arrodillarse, selle cada rasguño</translation>
    </message>
    <message>
        <source>German cockroach</source>
        <translation>Cucaracha alemana</translation>
    </message>
    <message>
        <source>German cockroach, nymph</source>
        <translation>Cucaracha alemana, ninfa</translation>
    </message>
    <message>
        <source>Gun in the sealant to the depth of the system and tool it</source>
        <translation>Aplique el sellador a la profundidad del sistema y alíselo</translation>
    </message>
    <message>
        <source>Gun the bead and tool it to both sides; it must not stick to a third</source>
        <translation>Aplique el cordón y alíselo a los dos lados; no debe pegarse a un tercero</translation>
    </message>
    <message>
        <source>Gun the bead over the whole gap and tool it to both sides</source>
        <translation>Aplique el cordón en todo el hueco y alíselo a los dos lados</translation>
    </message>
    <message>
        <source>Gun the bead over the wool and tool it to both sides</source>
        <translation>Aplique el cordón sobre la lana y alíselo a los dos lados</translation>
    </message>
    <message>
        <source>Hang netting or a tube over the last hole, open below, so that bats can crawl out and not back in</source>
        <translation>Cuelgue una red o un tubo sobre el último agujero, abierto abajo, para que los murciélagos puedan salir y no volver a entrar</translation>
    </message>
    <message>
        <source>Have the draft of the appliance tested again when the house has become tighter</source>
        <translation>Haga probar otra vez el tiro del aparato cuando la casa haya quedado más cerrada</translation>
    </message>
    <message>
        <source>Have the wood inspected and treated first; closing gaps does not end them and hides what tells of them</source>
        <translation>Haga revisar y tratar la madera primero; cerrar huecos no acaba con ellos y esconde sus señales</translation>
    </message>
    <message>
        <source>Honey bee</source>
        <translation>Abeja melífera</translation>
    </message>
    <message>
        <source>House centipede</source>
        <translation>Ciempiés doméstico</translation>
    </message>
    <message>
        <source>House cricket</source>
        <translation>Grillo doméstico</translation>
    </message>
    <message>
        <source>House gecko</source>
        <translation>Cuija casera</translation>
    </message>
    <message>
        <source>House mouse</source>
        <translation>Ratón casero</translation>
    </message>
    <message>
        <source>House sparrow</source>
        <translation>Gorrión doméstico</translation>
    </message>
    <message>
        <source>Insulation, plaster and sheets of this age may hold asbestos: do not disturb vermiculite or crumbling material; have it tested first</source>
        <translation>El aislante, el yeso y las láminas de esa época pueden llevar asbesto: no mueva vermiculita ni material que se desmorona; hágalo analizar primero</translation>
    </message>
    <message>
        <source>Isocyanates: air the room; the ceiling limit is 0.2 mg/m3 in air. Nobody without protection.</source>
        <translation>Isocianatos: ventile el cuarto; el límite máximo es 0.2 mg/m3 en el aire. Nadie sin protección.</translation>
    </message>
    <message>
        <source>Keep it damp for a day</source>
        <translation>Manténgalo húmedo un día</translation>
    </message>
    <message>
        <source>Ladder: its foot stands out by a quarter of its working length, it reaches 3 ft (0.9 m) above a landing, and power lines are far away</source>
        <translation>Escalera: su pie se separa un cuarto de su largo de trabajo, pasa 3 pies (0.9 m) del punto de llegada, y los cables de luz están lejos</translation>
    </message>
    <message>
        <source>Leave it alone until it has set; do not trim it fresh</source>
        <translation>Déjela hasta que endurezca; no la recorte fresca</translation>
    </message>
    <message>
        <source>Let the appliance and its flue grow cold; keep insulation away from the flue</source>
        <translation>Deje enfriar el aparato y su tiro; mantenga el aislante lejos del tiro</translation>
    </message>
    <message>
        <source>Look into the nest first; with no eggs and no young in it, put a one-way door over the hole</source>
        <translation>Mire primero el nido; si no hay huevos ni crías, ponga una puerta de un solo sentido sobre el agujero</translation>
    </message>
    <message>
        <source>Look up the listed system for this wall and this pipe or wire; its sheet says how deep</source>
        <translation>Busque el sistema aprobado para este muro y este tubo o cable; su hoja dice qué tan profundo</translation>
    </message>
    <message>
        <source>Look up the listed system for this wall and this pipe or wire; its sheet says what may stand behind the sealant</source>
        <translation>Busque el sistema aprobado para este muro y este tubo o cable; su hoja dice qué puede ir detrás del sellador</translation>
    </message>
    <message>
        <source>Measure the door, cut the sweep to its width</source>
        <translation>Mida la puerta, corte el guardapolvo a su ancho</translation>
    </message>
    <message>
        <source>Measure the door, cut the sweep to its width, close the cut end</source>
        <translation>Mida la puerta, corte el guardapolvo a su ancho, cierre la punta cortada</translation>
    </message>
    <message>
        <source>Membrane: no sharp tools and no solvents on it, and look for soft spots first</source>
        <translation>Membrana: sin herramientas con filo ni solventes, y busque primero partes blandas</translation>
    </message>
    <message>
        <source>Metal is slick when wet or dusty and burns skin in the sun: step along the screw lines</source>
        <translation>La lámina resbala mojada o con polvo y quema la piel al sol: pise por las líneas de tornillos</translation>
    </message>
    <message>
        <source>Nail or screw the strip of bronze or stainless steel to the stop, its open edge outward; miter the corners</source>
        <translation>Clave o atornille la tira de bronce o acero inoxidable al tope, con el borde abierto hacia afuera; corte las esquinas a inglete</translation>
    </message>
    <message>
        <source>Never close a weep: water that stays behind the brick rots the wall.</source>
        <translation>Nunca cierre un lloradero: el agua que se queda detrás del ladrillo pudre el muro.</translation>
    </message>
    <message>
        <source>No metal wool in or near electrical boxes, panels and bare wires.</source>
        <translation>Nada de lana metálica dentro o cerca de cajas eléctricas, tableros y cables pelados.</translation>
    </message>
    <message>
        <source>Nobody without protection comes back for 8 to 24 hours.</source>
        <translation>Nadie regresa sin protección durante 8 a 24 horas.</translation>
    </message>
    <message>
        <source>Norway rat</source>
        <translation>Rata noruega</translation>
    </message>
    <message>
        <source>Not while nights are cold: bats that sleep through the winter do not leave.</source>
        <translation>No mientras las noches estén frías: los murciélagos que duermen el invierno no salen.</translation>
    </message>
    <message>
        <source>Open and shut it a few times; it must close without force</source>
        <translation>Ábralo y ciérrelo unas veces; debe cerrar sin forzar</translation>
    </message>
    <message>
        <source>Open and shut the door a few times</source>
        <translation>Abra y cierre la puerta unas veces</translation>
    </message>
    <message>
        <source>Open the door halfway and unplug the opener; leave the springs alone</source>
        <translation>Abra la puerta a la mitad y desconecte el motor; no toque los resortes</translation>
    </message>
    <message>
        <source>Oriental cockroach</source>
        <translation>Cucaracha oriental</translation>
    </message>
    <message>
        <source>Pack copper or stainless wool tightly, 1 in deep, to just below the face; ordinary steel wool rusts and stains</source>
        <translation>Meta lana de cobre o inoxidable bien apretada, 1 pulg de fondo, hasta justo debajo de la cara; la lana de acero común se oxida y mancha</translation>
    </message>
    <message>
        <source>Pack copper or stainless wool tightly, 1 in deep; ordinary steel wool rusts and stains</source>
        <translation>Meta lana de cobre o inoxidable bien apretada, 1 pulg de fondo; la lana de acero común se oxida y mancha</translation>
    </message>
    <message>
        <source>Paint of this age may hold lead: no dry scraping or sanding; more than small areas take a certified renovator (40 CFR 745)</source>
        <translation>La pintura de esa época puede llevar plomo: no raspar ni lijar en seco; más que áreas pequeñas piden un renovador certificado (40 CFR 745)</translation>
    </message>
    <message>
        <source>Plug the opener in and test that the door still turns back when it meets something</source>
        <translation>Conecte el motor y compruebe que la puerta todavía regresa cuando topa con algo</translation>
    </message>
    <message>
        <source>Poison inside makes them die in the wall; who uses it for hire needs a license.</source>
        <translation>Con veneno adentro mueren en el muro; quien lo usa por paga necesita licencia.</translation>
    </message>
    <message>
        <source>Pour in a bucket of water: it must run off freely; put the grate back</source>
        <translation>Eche una cubeta de agua: debe irse libremente; ponga de nuevo la rejilla</translation>
    </message>
    <message>
        <source>Press in closed-cell backer rod, larger than the joint, to the depth of the bead; do not pierce it</source>
        <translation>Meta cordón de respaldo de celda cerrada, más grueso que la junta, a la profundidad del sellador; no lo pique</translation>
    </message>
    <message>
        <source>Press in stiff mortar 2 in deep, or as deep as the part is, and strike it off</source>
        <translation>Meta mortero duro 2 pulg de fondo, o lo que tenga de fondo la pieza, y enráselo</translation>
    </message>
    <message>
        <source>Prime porous masonry where the label asks for it</source>
        <translation>Ponga primario en la mampostería porosa donde la etiqueta lo pida</translation>
    </message>
    <message>
        <source>Pull at it: it must not come out</source>
        <translation>Jálelo: no debe salirse</translation>
    </message>
    <message>
        <source>Pull the old seal out of its track or off the frame, clean it</source>
        <translation>Saque el sello viejo de su riel o del marco, límpielo</translation>
    </message>
    <message>
        <source>Push the insert in, loosely enough that water and air still get through; no sealant, no mortar</source>
        <translation>Meta la pieza, tan suelta que pasen el agua y el aire; sin sellador, sin mortero</translation>
    </message>
    <message>
        <source>Put a one-way door over the last hole and fasten it all round, or they gnaw past it</source>
        <translation>Ponga una puerta de un solo sentido sobre el último agujero y fíjela por todos lados, o pasan royendo</translation>
    </message>
    <message>
        <source>Put a one-way flap over the last hole, close to the ground</source>
        <translation>Ponga una tapa de un solo sentido sobre el último agujero, cerca del suelo</translation>
    </message>
    <message>
        <source>Put the cover back so that it presses evenly</source>
        <translation>Ponga de nuevo la tapa de modo que presione parejo</translation>
    </message>
    <message>
        <source>Put the new strip on so that the leaf presses it by about half; no gap at the corners</source>
        <translation>Ponga la tira nueva de modo que la hoja la presione a la mitad; sin huecos en las esquinas</translation>
    </message>
    <message>
        <source>Recluse spider</source>
        <translation>Araña reclusa</translation>
    </message>
    <message>
        <source>Roof rat</source>
        <translation>Rata de techo</translation>
    </message>
    <message>
        <source>Roof: dry, in the cool of the day, with a harness where it is steep; stay off where you can work from its edge</source>
        <translation>Techo: seco, en las horas frescas, con arnés donde esté empinado; no suba si puede trabajar desde la orilla</translation>
    </message>
    <message>
        <source>Screw it to the leaf so that it is pressed to the sill along its whole length</source>
        <translation>Atorníllelo a la hoja de modo que presione el umbral en todo su largo</translation>
    </message>
    <message>
        <source>Screw it to the leaf so that it touches the sill along its whole length; light must not show under it</source>
        <translation>Atorníllelo a la hoja de modo que toque el umbral en todo su largo; no debe verse luz por debajo</translation>
    </message>
    <message>
        <source>Screw or staple it down flat, every 4 in</source>
        <translation>Atorníllela o engrápela plana, cada 4 pulg</translation>
    </message>
    <message>
        <source>Screw the collar to the framing and seal its edges with sealant for high temperatures, as flues need</source>
        <translation>Atornille el collarín a la madera y selle sus bordes con sellador de alta temperatura, como piden los tiros</translation>
    </message>
    <message>
        <source>Set its height so that the leaf presses on the seal along its whole length</source>
        <translation>Ajuste su altura para que la hoja presione el sello en todo su largo</translation>
    </message>
    <message>
        <source>Set traps along their runs inside, in boxes that children and pets cannot open, and look at them every day</source>
        <translation>Ponga trampas en sus pasos por dentro, en cajas que niños y mascotas no puedan abrir, y revíselas cada día</translation>
    </message>
    <message>
        <source>Shingles scuff in the heat and slip when dusty: soft soles, early in the day</source>
        <translation>Las tejas asfálticas se raspan con el calor y resbalan con polvo: suela blanda, temprano en el día</translation>
    </message>
    <message>
        <source>Silverfish</source>
        <translation>Pececillo de plata</translation>
    </message>
    <message>
        <source>Slide or nail in the new seal, let it stand past each end a little; fill the corners</source>
        <translation>Deslice o clave el sello nuevo, que salga un poco en cada punta; rellene las esquinas</translation>
    </message>
    <message>
        <source>Snake</source>
        <translation>Víbora</translation>
    </message>
    <message>
        <source>Somebody licensed takes the colony and all comb away; a hole shut over a living colony drives it into the rooms</source>
        <translation>Alguien con licencia se lleva la colonia y todo el panal; un agujero cerrado sobre una colonia viva la empuja a los cuartos</translation>
    </message>
    <message>
        <source>Somebody licensed treats the nest; a hole shut over a living nest drives it into the rooms</source>
        <translation>Alguien con licencia trata el nido; un agujero cerrado sobre un nido vivo lo empuja a los cuartos</translation>
    </message>
    <message>
        <source>Squirrels are game or protected in many states: ask before you trap them.</source>
        <translation>Las ardillas son de caza o están protegidas en muchos estados: pregunte antes de atraparlas.</translation>
    </message>
    <message>
        <source>Starling</source>
        <translation>Estornino</translation>
    </message>
    <message>
        <source>Stings can kill: keep away from a colony, and do not spray it.</source>
        <translation>Las picaduras pueden matar: no se acerque a una colonia, y no la rocíe.</translation>
    </message>
    <message>
        <source>Stings can kill: keep away from a nest.</source>
        <translation>Las picaduras pueden matar: no se acerque a un nido.</translation>
    </message>
    <message>
        <source>Subterranean termite</source>
        <translation>Termita subterránea</translation>
    </message>
    <message>
        <source>Take the cover off; at outlets and lights switch the circuit off first and test that it is dead</source>
        <translation>Quite la tapa; en contactos y lámparas corte primero el circuito y compruebe que no hay corriente</translation>
    </message>
    <message>
        <source>Take the grate off, clean the throat of the drain and push the seal in as its sheet says; one serves all slots of the grate</source>
        <translation>Quite la rejilla, limpie la garganta del desagüe y meta el sello como dice su hoja; uno sirve para todas las ranuras de la rejilla</translation>
    </message>
    <message>
        <source>Take the old strip off, clean and dry the stop</source>
        <translation>Quite la tira vieja, limpie y seque el tope</translation>
    </message>
    <message>
        <source>Take the old threshold out, clean the sill</source>
        <translation>Saque el umbral viejo, limpie la base</translation>
    </message>
    <message>
        <source>The dust of foam that is trimmed fresh may hold unreacted isocyanate.</source>
        <translation>El polvo de la espuma recortada fresca puede llevar isocianato sin reaccionar.</translation>
    </message>
    <message>
        <source>The springs of a garage door are under great tension: never loosen them.</source>
        <translation>Los resortes de una puerta de garaje tienen mucha tensión: nunca los afloje.</translation>
    </message>
    <message>
        <source>Tiles break underfoot: step on their lower third, over the overlap, and bring spare tiles</source>
        <translation>Las tejas se rompen al pisar: pise el tercio de abajo, sobre el traslape, y lleve tejas de repuesto</translation>
    </message>
    <message>
        <source>Tree squirrel</source>
        <translation>Ardilla de árbol</translation>
    </message>
    <message>
        <source>Two people: one works, one stays at the foot of the ladder</source>
        <translation>Dos personas: una trabaja, la otra se queda al pie de la escalera</translation>
    </message>
    <message>
        <source>Wet the masonry; hold large openings with a form or with hardware cloth behind</source>
        <translation>Moje la mampostería; en aberturas grandes ponga atrás una cimbra o malla soldada</translation>
    </message>
    <message>
        <source>What is inside stays inside for some weeks: expect to see some in the rooms until they are gone, caught or treated</source>
        <translation>Lo que está adentro sigue adentro unas semanas: es normal ver algunos en los cuartos hasta que se vayan, los atrapen o los traten</translation>
    </message>
    <message>
        <source>Write product, system and date on a label beside it</source>
        <translation>Escriba producto, sistema y fecha en una etiqueta al lado</translation>
    </message>
    <message>
        <source>Yellowjacket</source>
        <translation>Avispa chaqueta amarilla</translation>
    </message>
    <message>
        <source>Young bark scorpion</source>
        <translation>Cría de alacrán de corteza</translation>
    </message>
    <message>
        <source>a 1/2 in drill shank</source>
        <translation>el vástago de una broca de 1/2 pulg</translation>
    </message>
    <message>
        <source>a 1/4 in drill shank</source>
        <translation>el vástago de una broca de 1/4 pulg</translation>
    </message>
    <message>
        <source>a 3/8 in drill shank</source>
        <translation>el vástago de una broca de 3/8 pulg</translation>
    </message>
    <message>
        <source>a bead that sticks to the concrete behind the drain line; not sure which line it is: leave it and ask</source>
        <translation>un cordón que se pega al concreto detrás de la línea de desagüe; si no está seguro de qué línea es: déjela y pregunte</translation>
    </message>
    <message>
        <source>a card</source>
        <translation>una tarjeta</translation>
    </message>
    <message>
        <source>a cent</source>
        <translation>un centavo</translation>
    </message>
    <message>
        <source>a collar of sheet metal, its edges in high-temperature sealant</source>
        <translation>un collarín de lámina, sus bordes en sellador de alta temperatura</translation>
    </message>
    <message>
        <source>a damper that seats, or one that seals the top of the flue</source>
        <translation>una compuerta que asiente, o una que selle la boca del tiro</translation>
    </message>
    <message>
        <source>a dime</source>
        <translation>una moneda de diez centavos</translation>
    </message>
    <message>
        <source>a dollar coin</source>
        <translation>una moneda de un dólar</translation>
    </message>
    <message>
        <source>a fan blows out here; a flap that seats, never a plug</source>
        <translation>aquí sopla un ventilador; una tapa que asiente, nunca un tapón</translation>
    </message>
    <message>
        <source>a fan or an appliance blows out here</source>
        <translation>aquí sopla un ventilador o un aparato</translation>
    </message>
    <message>
        <source>a flap or damper that seats; no plug, and at a dryer no screen</source>
        <translation>una tapa o compuerta que asiente; nada de tapón, y en una secadora nada de malla</translation>
    </message>
    <message>
        <source>a gasket behind the plate, or sealant between the wall and the box</source>
        <translation>un empaque detrás de la placa, o sellador entre el muro y la caja</translation>
    </message>
    <message>
        <source>a gasket or sealant at the trim, or a light that is made to be covered</source>
        <translation>un empaque o sellador en el marco, o una lámpara hecha para cubrirse</translation>
    </message>
    <message>
        <source>a half dollar</source>
        <translation>una moneda de medio dólar</translation>
    </message>
    <message>
        <source>a hood whose flap seats; no screen</source>
        <translation>una campana cuya tapa asiente; sin malla</translation>
    </message>
    <message>
        <source>a light that is not made to be covered keeps about 3 in of air round it: no foam, and never boxed in tightly</source>
        <translation>una lámpara que no está hecha para cubrirse conserva unas 3 pulg de aire alrededor: nada de espuma, y nunca encajonada</translation>
    </message>
    <message>
        <source>a light that is not made to be covered keeps its air round it: seal its trim, never box it in</source>
        <translation>una lámpara que no está hecha para cubrirse conserva su aire alrededor: selle su marco, nunca la encajone</translation>
    </message>
    <message>
        <source>a listed cover or hardware cloth of 0.035 in wire, openings of 1/4 in at most, as long as enough free area is left</source>
        <translation>una tapa aprobada o malla soldada de alambre de 0.035 pulg, con aberturas de 1/4 pulg como máximo, mientras quede suficiente área libre</translation>
    </message>
    <message>
        <source>a listed fire stop: fire-rated sealant over its packing, or mortar</source>
        <translation>un cortafuego aprobado: sellador contra fuego sobre su relleno, o mortero</translation>
    </message>
    <message>
        <source>a listed flood vent whose flap seats</source>
        <translation>una rejilla de inundación aprobada cuya tapa asiente</translation>
    </message>
    <message>
        <source>a metal fire stop that keeps the flue clear of wood, never foam</source>
        <translation>un cortafuego de metal que separe el tiro de la madera, nunca espuma</translation>
    </message>
    <message>
        <source>a metal plate on the leaf, or a new leaf</source>
        <translation>una placa de metal en la hoja, o una hoja nueva</translation>
    </message>
    <message>
        <source>a nickel</source>
        <translation>una moneda de cinco centavos</translation>
    </message>
    <message>
        <source>a party wall holds back fire; what closes it must too</source>
        <translation>un muro medianero detiene el fuego; lo que lo cierra también debe hacerlo</translation>
    </message>
    <message>
        <source>a pencil</source>
        <translation>un lápiz</translation>
    </message>
    <message>
        <source>a plumbing vent, the drains cannot breathe without it</source>
        <translation>un respiradero de plomería, sin él los desagües no respiran</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>una moneda de veinticinco centavos</translation>
    </message>
    <message>
        <source>a trap seal under the grate, which lets water down and nothing up, and water in the trap</source>
        <translation>un sello de trampa bajo la rejilla, que deja bajar el agua y nada subir, y agua en la trampa</translation>
    </message>
    <message>
        <source>a trap that stands dry is open to the sewer: fill it</source>
        <translation>una trampa seca queda abierta al drenaje: llénela</translation>
    </message>
    <message>
        <source>a weep screed drains the wall; only the joint under it may be closed</source>
        <translation>un perfil de goteo desagua el muro; solo se puede cerrar la junta debajo de él</translation>
    </message>
    <message>
        <source>access panel</source>
        <translation>tapa de registro</translation>
    </message>
    <message>
        <source>adjustable threshold, 3 ft</source>
        <translation>umbral ajustable, 3 pies</translation>
    </message>
    <message>
        <source>air baffle over the top plate</source>
        <translation>deflector de aire sobre la solera superior</translation>
    </message>
    <message>
        <source>air conditioner&apos;s secondary drain through the soffit</source>
        <translation>desagüe secundario del aire acondicionado por el sofito</translation>
    </message>
    <message>
        <source>an appliance breathes here; closed, its fumes come into the house</source>
        <translation>aquí respira un aparato; si se cierra, sus gases entran a la casa</translation>
    </message>
    <message>
        <source>an appliance breathes here; no screen finer than 1/4 in</source>
        <translation>aquí respira un aparato; ninguna malla más fina que 1/4 pulg</translation>
    </message>
    <message>
        <source>an electrician&apos;s work, power off, no metal wool</source>
        <translation>trabajo de electricista, sin corriente, nada de lana metálica</translation>
    </message>
    <message>
        <source>an open mesh insert</source>
        <translation>una pieza de malla abierta</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>anything else of a weep screed</source>
        <translation>cualquier otra parte de un perfil de goteo</translation>
    </message>
    <message>
        <source>around the pipe only: its mouth is never plugged</source>
        <translation>solo alrededor del tubo: su boca nunca se tapa</translation>
    </message>
    <message>
        <source>around the pipe only: its mouth is never plugged, steam and hot water leave there</source>
        <translation>solo alrededor del tubo: su boca nunca se tapa, por ahí salen vapor y agua caliente</translation>
    </message>
    <message>
        <source>ask an electrician for a listed knockout plug</source>
        <translation>pida a un electricista un tapón aprobado para la perforación</translation>
    </message>
    <message>
        <source>ask the utility or an electrician for duct seal and listed knockout plugs</source>
        <translation>pida a la compañía de luz o a un electricista masilla para ductos y tapones aprobados</translation>
    </message>
    <message>
        <source>attic hatch</source>
        <translation>trampilla del ático</translation>
    </message>
    <message>
        <source>attic, ridge and soffit vents</source>
        <translation>rejillas de ático, cumbrera y sofito</translation>
    </message>
    <message>
        <source>backer rod and sealant bead</source>
        <translation>cordón de respaldo y cordón de sellador</translation>
    </message>
    <message>
        <source>backer rod roller</source>
        <translation>rodillo para cordón de respaldo</translation>
    </message>
    <message>
        <source>backer rod, 1 1/2 in</source>
        <translation>cordón de respaldo, 1 1/2 pulg</translation>
    </message>
    <message>
        <source>backer rod, 1 1/4 in</source>
        <translation>cordón de respaldo, 1 1/4 pulg</translation>
    </message>
    <message>
        <source>backer rod, 1 in</source>
        <translation>cordón de respaldo, 1 pulg</translation>
    </message>
    <message>
        <source>backer rod, 1/2 in</source>
        <translation>cordón de respaldo, 1/2 pulg</translation>
    </message>
    <message>
        <source>backer rod, 1/4 in</source>
        <translation>cordón de respaldo, 1/4 pulg</translation>
    </message>
    <message>
        <source>backer rod, 2 in</source>
        <translation>cordón de respaldo, 2 pulg</translation>
    </message>
    <message>
        <source>backer rod, 3/4 in</source>
        <translation>cordón de respaldo, 3/4 pulg</translation>
    </message>
    <message>
        <source>backer rod, 3/8 in</source>
        <translation>cordón de respaldo, 3/8 pulg</translation>
    </message>
    <message>
        <source>backer rod, 5/8 in</source>
        <translation>cordón de respaldo, 5/8 pulg</translation>
    </message>
    <message>
        <source>backer rod, 7/8 in</source>
        <translation>cordón de respaldo, 7/8 pulg</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>baseboard-to-floor joint</source>
        <translation>junta del zócalo con el piso</translation>
    </message>
    <message>
        <source>bath fan</source>
        <translation>extractor del baño</translation>
    </message>
    <message>
        <source>bats rear young that cannot fly yet</source>
        <translation>los murciélagos crían y sus crías aún no vuelan</translation>
    </message>
    <message>
        <source>bats rear young that cannot fly yet; the state may have dates of its own</source>
        <translation>los murciélagos crían y sus crías aún no vuelan; el estado puede tener sus propias fechas</translation>
    </message>
    <message>
        <source>behind the apron; the flashing&apos;s lower edge stays free to drain</source>
        <translation>detrás del faldón; el borde de abajo del vierteaguas queda libre para desaguar</translation>
    </message>
    <message>
        <source>behind the drain line only, held to the concrete, and never smeared over the nose or the holes of the screed</source>
        <translation>solo detrás de la línea de desagüe, pegado al concreto, y nunca untado sobre la nariz o los agujeros del perfil</translation>
    </message>
    <message>
        <source>behind the gutter and under the drip edge water has to run off the deck: nothing that dams it</source>
        <translation>detrás de la canaleta y bajo el goterón el agua debe escurrir del techo: nada que la detenga</translation>
    </message>
    <message>
        <source>behind the plate only: the alarm&apos;s own openings stay free</source>
        <translation>solo detrás de la placa: las aberturas de la alarma quedan libres</translation>
    </message>
    <message>
        <source>between a garage and the house</source>
        <translation>entre un garaje y la casa</translation>
    </message>
    <message>
        <source>between a garage or another unit and the attic</source>
        <translation>entre un garaje u otra vivienda y el ático</translation>
    </message>
    <message>
        <source>between an enclosed porch and the house</source>
        <translation>entre un porche cerrado y la casa</translation>
    </message>
    <message>
        <source>between garage and house, a fill that holds back fire</source>
        <translation>entre garaje y casa, un relleno que detenga el fuego</translation>
    </message>
    <message>
        <source>between the house and an attached space of another kind</source>
        <translation>entre la casa y un espacio anexo de otro tipo</translation>
    </message>
    <message>
        <source>box</source>
        <translation>caja</translation>
    </message>
    <message>
        <source>boxes and plates of outlets, switches and lights</source>
        <translation>cajas y placas de contactos, apagadores y lámparas</translation>
    </message>
    <message>
        <source>brush</source>
        <translation>cepillo</translation>
    </message>
    <message>
        <source>bucket</source>
        <translation>cubeta</translation>
    </message>
    <message>
        <source>cable line</source>
        <translation>línea de cable</translation>
    </message>
    <message>
        <source>cable or telephone plate</source>
        <translation>placa de cable o teléfono</translation>
    </message>
    <message>
        <source>can</source>
        <translation>bote</translation>
    </message>
    <message>
        <source>carpet edge at the wall</source>
        <translation>orilla de la alfombra en el muro</translation>
    </message>
    <message>
        <source>cartridge</source>
        <translation>cartucho</translation>
    </message>
    <message>
        <source>caulking gun</source>
        <translation>pistola de sellador</translation>
    </message>
    <message>
        <source>ceiling light&apos;s box</source>
        <translation>caja de la lámpara del techo</translation>
    </message>
    <message>
        <source>close the crack between the frame and the wall behind it</source>
        <translation>cierre la grieta entre el marco y el muro de atrás</translation>
    </message>
    <message>
        <source>close the joint between screed and foundation behind them</source>
        <translation>cierre la junta entre el perfil y el cimiento detrás de ellos</translation>
    </message>
    <message>
        <source>close the joint between screed and foundation below it</source>
        <translation>cierre la junta entre el perfil y el cimiento debajo de él</translation>
    </message>
    <message>
        <source>close the joint between screed and foundation below it; if it is another joint, say with `at` how high it lies</source>
        <translation>cierre la junta entre el perfil y el cimiento debajo de él; si es otra junta, diga con `at` a qué altura está</translation>
    </message>
    <message>
        <source>close where the wall or the roof behind it is open; if it is no lap, say what else its sides are made of</source>
        <translation>cierre donde el muro o el techo de atrás está abierto; si no es un traslape, diga de qué más son sus lados</translation>
    </message>
    <message>
        <source>closing it sends the fumes of a gas appliance into the house</source>
        <translation>cerrarlo manda los gases de un aparato de gas a la casa</translation>
    </message>
    <message>
        <source>combustion air</source>
        <translation>aire de combustión</translation>
    </message>
    <message>
        <source>combustion-air louver</source>
        <translation>rejilla de aire de combustión</translation>
    </message>
    <message>
        <source>condensate line through the foundation</source>
        <translation>línea de condensado por el cimiento</translation>
    </message>
    <message>
        <source>control joint</source>
        <translation>junta de control</translation>
    </message>
    <message>
        <source>control joint where a block wall meets the house</source>
        <translation>junta de control donde una barda de bloque llega a la casa</translation>
    </message>
    <message>
        <source>copper wool</source>
        <translation>lana de cobre</translation>
    </message>
    <message>
        <source>cracked corner of a window frame</source>
        <translation>esquina rota de un marco de ventana</translation>
    </message>
    <message>
        <source>crawl door, sides and head</source>
        <translation>puerta al espacio bajo el piso, lados y dintel</translation>
    </message>
    <message>
        <source>crawl vent</source>
        <translation>rejilla del espacio bajo el piso</translation>
    </message>
    <message>
        <source>crawl vents</source>
        <translation>rejillas del espacio bajo el piso</translation>
    </message>
    <message>
        <source>cut-out in the floor under the tub drain</source>
        <translation>corte en el piso bajo el desagüe de la tina</translation>
    </message>
    <message>
        <source>cut-out round the stack</source>
        <translation>corte alrededor de la bajante</translation>
    </message>
    <message>
        <source>cut-resistant gloves</source>
        <translation>guantes anticorte</translation>
    </message>
    <message>
        <source>door or hatch</source>
        <translation>puerta o trampilla</translation>
    </message>
    <message>
        <source>door sweep</source>
        <translation>guardapolvo de puerta</translation>
    </message>
    <message>
        <source>door sweep with a core of metal wool</source>
        <translation>guardapolvo con alma de lana metálica</translation>
    </message>
    <message>
        <source>door sweep with metal wool, 3 ft</source>
        <translation>guardapolvo con lana metálica, 3 pies</translation>
    </message>
    <message>
        <source>door sweep, 3 ft</source>
        <translation>guardapolvo de puerta, 3 pies</translation>
    </message>
    <message>
        <source>doorbell</source>
        <translation>timbre</translation>
    </message>
    <message>
        <source>doors, hatches and sashes</source>
        <translation>puertas, trampillas y hojas de ventana</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>desagüe</translation>
    </message>
    <message>
        <source>drain and weep openings in stucco, casing beads and screeds</source>
        <translation>aberturas de desagüe en estuco, remates y perfiles</translation>
    </message>
    <message>
        <source>drain holes of a weep screed</source>
        <translation>agujeros de desagüe de un perfil de goteo</translation>
    </message>
    <message>
        <source>drain holes of the weep screed, stopped up they hold water in the wall</source>
        <translation>agujeros de desagüe del perfil de goteo, tapados retienen agua en el muro</translation>
    </message>
    <message>
        <source>drain pipe under a sink</source>
        <translation>tubo de desagüe bajo un fregadero</translation>
    </message>
    <message>
        <source>drains the wall; an open mesh insert at most</source>
        <translation>desagua el muro; como mucho una pieza de malla abierta</translation>
    </message>
    <message>
        <source>drill</source>
        <translation>taladro</translation>
    </message>
    <message>
        <source>drop cloth</source>
        <translation>lona de protección</translation>
    </message>
    <message>
        <source>dry surface</source>
        <translation>superficie seca</translation>
    </message>
    <message>
        <source>dry surface, 40 to 100 F (4 to 38 C)</source>
        <translation>superficie seca, 40 a 100 F (4 a 38 C)</translation>
    </message>
    <message>
        <source>dry surface, above 50 F (10 C) for self-adhesive strips</source>
        <translation>superficie seca, más de 50 F (10 C) para tiras autoadhesivas</translation>
    </message>
    <message>
        <source>dryer duct through the floor</source>
        <translation>ducto de la secadora por el piso</translation>
    </message>
    <message>
        <source>dryer exhaust, stopped up it is a fire hazard; a flap that seats, and no screen</source>
        <translation>salida de la secadora, tapada es peligro de incendio; una tapa que asiente, y sin malla</translation>
    </message>
    <message>
        <source>dryer outlet</source>
        <translation>salida de la secadora</translation>
    </message>
    <message>
        <source>dust mask</source>
        <translation>mascarilla para polvo</translation>
    </message>
    <message>
        <source>edges of flashings and nail flanges</source>
        <translation>bordes de vierteaguas y aletas de clavar</translation>
    </message>
    <message>
        <source>eggs and young may be in the nest</source>
        <translation>puede haber huevos y crías en el nido</translation>
    </message>
    <message>
        <source>elastic fire-rated sealant</source>
        <translation>sellador elástico contra fuego</translation>
    </message>
    <message>
        <source>elastic sealant over backer rod</source>
        <translation>sellador elástico sobre cordón de respaldo</translation>
    </message>
    <message>
        <source>elastic sealant over backer rod only: wall and house move apart</source>
        <translation>solo sellador elástico sobre cordón de respaldo: barda y casa se separan</translation>
    </message>
    <message>
        <source>elastic sealant over backer rod only; mortar or hard foam would crack the wall beside it</source>
        <translation>solo sellador elástico sobre cordón de respaldo; el mortero o la espuma dura agrietarían el muro de al lado</translation>
    </message>
    <message>
        <source>electric meter can</source>
        <translation>caja del medidor de luz</translation>
    </message>
    <message>
        <source>electrical panel&apos;s frame</source>
        <translation>marco del tablero eléctrico</translation>
    </message>
    <message>
        <source>electrical service conduit</source>
        <translation>tubo de la acometida eléctrica</translation>
    </message>
    <message>
        <source>electrical service conduit and panel frame, at the wall</source>
        <translation>tubo de la acometida y marco del tablero, en el muro</translation>
    </message>
    <message>
        <source>empty irrigation sleeve</source>
        <translation>camisa de riego vacía</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>salida de aire</translation>
    </message>
    <message>
        <source>exhaust cap</source>
        <translation>capuchón de salida de aire</translation>
    </message>
    <message>
        <source>fascia-to-roof-deck joint</source>
        <translation>junta de la fascia con el techo</translation>
    </message>
    <message>
        <source>fiber line</source>
        <translation>línea de fibra óptica</translation>
    </message>
    <message>
        <source>fire-rated sealant</source>
        <translation>sellador contra fuego</translation>
    </message>
    <message>
        <source>fire-rated sealant over its packing, or mortar</source>
        <translation>sellador contra fuego sobre su relleno, o mortero</translation>
    </message>
    <message>
        <source>fire-rated sealant over its packing, or mortar; an enclosed porch is free: name it so</source>
        <translation>sellador contra fuego sobre su relleno, o mortero; un porche cerrado queda libre: nómbrelo así</translation>
    </message>
    <message>
        <source>fireplace damper</source>
        <translation>compuerta de la chimenea</translation>
    </message>
    <message>
        <source>fitted ring around a pipe</source>
        <translation>anillo ajustado a un tubo</translation>
    </message>
    <message>
        <source>flashing at a chimney</source>
        <translation>vierteaguas en una chimenea</translation>
    </message>
    <message>
        <source>flashing at the chimney</source>
        <translation>vierteaguas en la chimenea</translation>
    </message>
    <message>
        <source>flat screwdriver</source>
        <translation>desarmador plano</translation>
    </message>
    <message>
        <source>flood opening</source>
        <translation>abertura para inundación</translation>
    </message>
    <message>
        <source>flood opening&apos;s flap</source>
        <translation>tapa de la abertura para inundación</translation>
    </message>
    <message>
        <source>flood openings</source>
        <translation>aberturas para inundación</translation>
    </message>
    <message>
        <source>flood water has to pass by itself, both ways</source>
        <translation>el agua de inundación debe pasar por sí sola, en los dos sentidos</translation>
    </message>
    <message>
        <source>floor drain</source>
        <translation>coladera de piso</translation>
    </message>
    <message>
        <source>flue cold</source>
        <translation>tiro frío</translation>
    </message>
    <message>
        <source>flue collar in the ceiling</source>
        <translation>collarín del tiro en el techo</translation>
    </message>
    <message>
        <source>flues are hot: never foam or plain sealant, and wood stays 1 in off metal flues and 2 in off masonry chimneys</source>
        <translation>los tiros están calientes: nunca espuma ni sellador común, y la madera queda a 1 pulg de tiros de metal y a 2 pulg de chimeneas de mampostería</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>espuma</translation>
    </message>
    <message>
        <source>foam gun or straw</source>
        <translation>pistola o popote de espuma</translation>
    </message>
    <message>
        <source>framing round the chimney</source>
        <translation>madera alrededor de la chimenea</translation>
    </message>
    <message>
        <source>gable vent</source>
        <translation>rejilla del hastial</translation>
    </message>
    <message>
        <source>galvanized sheet, 26 gauge, 2 ft x 3 ft</source>
        <translation>lámina galvanizada, calibre 26, 2 x 3 pies</translation>
    </message>
    <message>
        <source>gap under the door</source>
        <translation>hueco bajo la puerta</translation>
    </message>
    <message>
        <source>gaps round flues and chimneys</source>
        <translation>huecos alrededor de tiros y chimeneas</translation>
    </message>
    <message>
        <source>gaps whose side is a flue or a chimney</source>
        <translation>huecos que tienen a un lado un tiro o una chimenea</translation>
    </message>
    <message>
        <source>garage door seal</source>
        <translation>sello de la puerta del garaje</translation>
    </message>
    <message>
        <source>garage door&apos;s bottom seal</source>
        <translation>sello inferior de la puerta del garaje</translation>
    </message>
    <message>
        <source>garage door&apos;s lower corners</source>
        <translation>esquinas inferiores de la puerta del garaje</translation>
    </message>
    <message>
        <source>garage door&apos;s side seals</source>
        <translation>sellos laterales de la puerta del garaje</translation>
    </message>
    <message>
        <source>gas line through the floor</source>
        <translation>línea de gas por el piso</translation>
    </message>
    <message>
        <source>gas riser</source>
        <translation>subida de gas</translation>
    </message>
    <message>
        <source>gas stub-out</source>
        <translation>salida de gas</translation>
    </message>
    <message>
        <source>gasket</source>
        <translation>empaque</translation>
    </message>
    <message>
        <source>gasket strip, closed cell</source>
        <translation>tira de empaque, celda cerrada</translation>
    </message>
    <message>
        <source>glasses</source>
        <translation>lentes</translation>
    </message>
    <message>
        <source>gloves</source>
        <translation>guantes</translation>
    </message>
    <message>
        <source>goggles</source>
        <translation>goggles</translation>
    </message>
    <message>
        <source>grate of a floor drain</source>
        <translation>rejilla de una coladera de piso</translation>
    </message>
    <message>
        <source>hacksaw</source>
        <translation>segueta</translation>
    </message>
    <message>
        <source>hammer</source>
        <translation>martillo</translation>
    </message>
    <message>
        <source>hardware cloth, 1/4 in, 0.035 in wire, 2 ft x 5 ft</source>
        <translation>malla soldada, 1/4 pulg, alambre de 0.035 pulg, 2 x 5 pies</translation>
    </message>
    <message>
        <source>hardware cloth, 1/8 in, 2 ft x 5 ft</source>
        <translation>malla soldada, 1/8 pulg, 2 x 5 pies</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>agujero</translation>
    </message>
    <message>
        <source>hole in the ceiling or floor</source>
        <translation>agujero en el techo o el piso</translation>
    </message>
    <message>
        <source>hole in the drywall</source>
        <translation>agujero en la tablaroca</translation>
    </message>
    <message>
        <source>hole in the outside wall</source>
        <translation>agujero en el muro exterior</translation>
    </message>
    <message>
        <source>hose bibb</source>
        <translation>llave de manguera</translation>
    </message>
    <message>
        <source>in a wall or floor that holds back fire, a listed fire stop only</source>
        <translation>en un muro o piso que detiene el fuego, solo un cortafuego aprobado</translation>
    </message>
    <message>
        <source>in a wall that holds back fire, a listed fire stop only</source>
        <translation>en un muro que detiene el fuego, solo un cortafuego aprobado</translation>
    </message>
    <message>
        <source>it must go on opening; a way out in a fire stays one</source>
        <translation>debe seguir abriendo; una salida en caso de incendio lo sigue siendo</translation>
    </message>
    <message>
        <source>joint between mantel and drywall</source>
        <translation>junta entre la repisa y la tablaroca</translation>
    </message>
    <message>
        <source>joint between sill plate and foundation</source>
        <translation>junta entre la solera y el cimiento</translation>
    </message>
    <message>
        <source>joint between sill plate and slab</source>
        <translation>junta entre la solera y la losa</translation>
    </message>
    <message>
        <source>joint between weep screed and foundation</source>
        <translation>junta entre el perfil de goteo y el cimiento</translation>
    </message>
    <message>
        <source>joint under the rim joist</source>
        <translation>junta bajo la vigueta perimetral</translation>
    </message>
    <message>
        <source>joints between floor boards</source>
        <translation>juntas entre las tablas del piso</translation>
    </message>
    <message>
        <source>joist pocket in a party wall</source>
        <translation>hueco de vigueta en un muro medianero</translation>
    </message>
    <message>
        <source>knockout of an electrical panel</source>
        <translation>perforación de un tablero eléctrico</translation>
    </message>
    <message>
        <source>laps of siding and tiles shed water and let what is behind them dry</source>
        <translation>los traslapes de tablas y tejas escurren el agua y dejan secar lo que está detrás</translation>
    </message>
    <message>
        <source>laps of siding or of roof tiles that were typed in</source>
        <translation>traslapes de tablas o tejas que se anotaron a mano</translation>
    </message>
    <message>
        <source>leave the bottom of the plate open to drain, and switch the power off</source>
        <translation>deje abierta la parte de abajo de la placa para desaguar, y corte la corriente</translation>
    </message>
    <message>
        <source>line set of the air conditioner</source>
        <translation>líneas de refrigerante del aire acondicionado</translation>
    </message>
    <message>
        <source>lint catches on a screen, and a dryer that cannot blow out is a fire hazard</source>
        <translation>la pelusa se atora en una malla, y una secadora que no puede soplar es peligro de incendio</translation>
    </message>
    <message>
        <source>long sleeves</source>
        <translation>mangas largas</translation>
    </message>
    <message>
        <source>long slot at the foot of stucco, of which nobody said which line it is</source>
        <translation>rendija larga al pie del estuco, de la que nadie dijo qué línea es</translation>
    </message>
    <message>
        <source>long slot at the foot of stucco, screed and concrete, of which nobody said which line it is</source>
        <translation>rendija larga al pie de estuco, perfil y concreto, de la que nadie dijo qué línea es</translation>
    </message>
    <message>
        <source>long slot between stucco and metal at the foot of a wall</source>
        <translation>rendija larga entre estuco y metal al pie de un muro</translation>
    </message>
    <message>
        <source>long slot between stucco or its screed and concrete at the foot of a wall</source>
        <translation>rendija larga entre el estuco o su perfil y el concreto al pie de un muro</translation>
    </message>
    <message>
        <source>look for birds, bats and bees first: no animal is shut in</source>
        <translation>busque primero aves, murciélagos y abejas: no se encierra a ningún animal</translation>
    </message>
    <message>
        <source>look, and say what its sides are made of: [stucco, concrete] is the joint, [stucco, metal] is the line that drains</source>
        <translation>mire, y diga de qué son sus lados: [stucco, concrete] es la junta, [stucco, metal] es la línea que desagua</translation>
    </message>
    <message>
        <source>lower corner of a door</source>
        <translation>esquina inferior de una puerta</translation>
    </message>
    <message>
        <source>mesh</source>
        <translation>malla</translation>
    </message>
    <message>
        <source>mesh insert for brick weeps</source>
        <translation>pieza de malla para lloraderos de ladrillo</translation>
    </message>
    <message>
        <source>mesh of a chimney cap</source>
        <translation>malla de un capuchón de chimenea</translation>
    </message>
    <message>
        <source>mesh with clear openings of 1/16 in to 1/4 in, as long as enough free area is left</source>
        <translation>malla con aberturas libres de 1/16 a 1/4 pulg, mientras quede suficiente área libre</translation>
    </message>
    <message>
        <source>mesh with clear openings of 1/16 in to 1/4 in, as long as enough free area is left; a plumbing vent gets none</source>
        <translation>malla con aberturas libres de 1/16 a 1/4 pulg, mientras quede suficiente área libre; un respiradero de plomería no lleva ninguna</translation>
    </message>
    <message>
        <source>mesh with clear openings of 1/4 in or more, and the free area that the appliances&apos; input asks for</source>
        <translation>malla con aberturas libres de 1/4 pulg o más, y el área libre que pide la potencia de los aparatos</translation>
    </message>
    <message>
        <source>metal mesh</source>
        <translation>malla metálica</translation>
    </message>
    <message>
        <source>metal plate</source>
        <translation>placa de metal</translation>
    </message>
    <message>
        <source>metal-wool fill</source>
        <translation>relleno de lana metálica</translation>
    </message>
    <message>
        <source>metal-wool fill under a sealant bead</source>
        <translation>relleno de lana metálica bajo un cordón de sellador</translation>
    </message>
    <message>
        <source>metal-wool fill under fire-rated sealant</source>
        <translation>relleno de lana metálica bajo sellador contra fuego</translation>
    </message>
    <message>
        <source>missing knockout of the electrical panel</source>
        <translation>perforación sin tapón del tablero eléctrico</translation>
    </message>
    <message>
        <source>mortar</source>
        <translation>mortero</translation>
    </message>
    <message>
        <source>mortar joints of the block wall</source>
        <translation>juntas de mortero de la barda de bloque</translation>
    </message>
    <message>
        <source>mortar mix, 10 lb</source>
        <translation>mezcla de mortero, 10 lb</translation>
    </message>
    <message>
        <source>mortar, or fire-rated sealant over its packing</source>
        <translation>mortero, o sellador contra fuego sobre su relleno</translation>
    </message>
    <message>
        <source>mouth of a plumbing vent</source>
        <translation>boca de un respiradero de plomería</translation>
    </message>
    <message>
        <source>movement joint</source>
        <translation>junta de movimiento</translation>
    </message>
    <message>
        <source>movement joint between a garage or another unit and the house</source>
        <translation>junta de movimiento entre un garaje u otra vivienda y la casa</translation>
    </message>
    <message>
        <source>no foam at a chimney, and the flashing&apos;s lower edge stays free to drain</source>
        <translation>nada de espuma en una chimenea, y el borde de abajo del vierteaguas queda libre para desaguar</translation>
    </message>
    <message>
        <source>no metal wool on a wire whose jacket is worn</source>
        <translation>nada de lana metálica en un cable con el forro gastado</translation>
    </message>
    <message>
        <source>no screws into the duct and no screen at its mouth: lint catches on them</source>
        <translation>sin tornillos en el ducto y sin malla en su boca: ahí se atora la pelusa</translation>
    </message>
    <message>
        <source>no screws into the duct: lint catches on them</source>
        <translation>sin tornillos en el ducto: ahí se atora la pelusa</translation>
    </message>
    <message>
        <source>one-component foam, 12 oz</source>
        <translation>espuma de un componente, 12 oz</translation>
    </message>
    <message>
        <source>one-way door or netting</source>
        <translation>puerta o red de un solo sentido</translation>
    </message>
    <message>
        <source>only the joint, behind the drain line, never over nose or holes; not sure which line it is: leave it</source>
        <translation>solo la junta, detrás de la línea de desagüe, nunca sobre nariz o agujeros; si no está seguro de qué línea es: déjela</translation>
    </message>
    <message>
        <source>open box in the slab under the tub trap</source>
        <translation>caja abierta en la losa bajo la trampa de la tina</translation>
    </message>
    <message>
        <source>open drywall seam</source>
        <translation>unión abierta de la tablaroca</translation>
    </message>
    <message>
        <source>open joist bays behind the porch ledger</source>
        <translation>vanos abiertos entre viguetas detrás del larguero del porche</translation>
    </message>
    <message>
        <source>open mesh insert for brick weeps</source>
        <translation>pieza de malla abierta para lloraderos de ladrillo</translation>
    </message>
    <message>
        <source>open miter at a fascia corner</source>
        <translation>inglete abierto en una esquina de la fascia</translation>
    </message>
    <message>
        <source>open mouth of a pipe that is a vent</source>
        <translation>boca abierta de un tubo que es respiradero</translation>
    </message>
    <message>
        <source>open rake return</source>
        <translation>retorno de alero abierto</translation>
    </message>
    <message>
        <source>open top of a chase or a party wall</source>
        <translation>parte de arriba abierta de un ducto de obra o un muro medianero</translation>
    </message>
    <message>
        <source>open tops of the block wall&apos;s cells</source>
        <translation>celdas abiertas arriba de la barda de bloque</translation>
    </message>
    <message>
        <source>open weep joint in the brick</source>
        <translation>junta de lloradero abierta en el ladrillo</translation>
    </message>
    <message>
        <source>other drains</source>
        <translation>otros desagües</translation>
    </message>
    <message>
        <source>other exhaust</source>
        <translation>otras salidas de aire</translation>
    </message>
    <message>
        <source>other movement joints</source>
        <translation>otras juntas de movimiento</translation>
    </message>
    <message>
        <source>other vents</source>
        <translation>otras rejillas</translation>
    </message>
    <message>
        <source>other weeps</source>
        <translation>otros lloraderos</translation>
    </message>
    <message>
        <source>outdoor light, plate to wall</source>
        <translation>lámpara exterior, placa al muro</translation>
    </message>
    <message>
        <source>outdoor outlet cover</source>
        <translation>tapa de contacto exterior</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>contacto</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>pipe through the bottom plate</source>
        <translation>tubo por la solera inferior</translation>
    </message>
    <message>
        <source>pipe through the drywall</source>
        <translation>tubo por la tablaroca</translation>
    </message>
    <message>
        <source>pipe through the outside wall</source>
        <translation>tubo por el muro exterior</translation>
    </message>
    <message>
        <source>pipe through the rim joist</source>
        <translation>tubo por la vigueta perimetral</translation>
    </message>
    <message>
        <source>pipe through the whole partition</source>
        <translation>tubo por todo el muro divisorio</translation>
    </message>
    <message>
        <source>plumbing vent through the roof</source>
        <translation>respiradero de plomería por el techo</translation>
    </message>
    <message>
        <source>plumbing vent through the top plate</source>
        <translation>respiradero de plomería por la solera superior</translation>
    </message>
    <message>
        <source>pointing trowel</source>
        <translation>cuchara de albañil</translation>
    </message>
    <message>
        <source>polyurethane sealant</source>
        <translation>sellador de poliuretano</translation>
    </message>
    <message>
        <source>power off; no metal in or near the box, and no foam in it</source>
        <translation>sin corriente; nada de metal dentro o cerca de la caja, y nada de espuma en ella</translation>
    </message>
    <message>
        <source>power off; no metal wool in or near the box</source>
        <translation>sin corriente; nada de lana metálica dentro o cerca de la caja</translation>
    </message>
    <message>
        <source>pull-down attic stair</source>
        <translation>escalera plegable del ático</translation>
    </message>
    <message>
        <source>pushed together and taped with foil; no screws into a dryer duct</source>
        <translation>se empuja y se sella con cinta de aluminio; sin tornillos en un ducto de secadora</translation>
    </message>
    <message>
        <source>rags</source>
        <translation>trapos</translation>
    </message>
    <message>
        <source>range hood duct</source>
        <translation>ducto de la campana de cocina</translation>
    </message>
    <message>
        <source>recessed light</source>
        <translation>lámpara empotrada</translation>
    </message>
    <message>
        <source>relief and condensate outlets, vents of gas regulators</source>
        <translation>salidas de alivio y condensado, respiraderos de reguladores de gas</translation>
    </message>
    <message>
        <source>relief outlet</source>
        <translation>salida de alivio</translation>
    </message>
    <message>
        <source>respirator</source>
        <translation>respirador</translation>
    </message>
    <message>
        <source>respirator for organic vapor</source>
        <translation>respirador para vapores orgánicos</translation>
    </message>
    <message>
        <source>return grille frame</source>
        <translation>marco de la rejilla de retorno</translation>
    </message>
    <message>
        <source>return grille in the ceiling or floor</source>
        <translation>rejilla de retorno en el techo o el piso</translation>
    </message>
    <message>
        <source>ridge vent</source>
        <translation>ventilación de cumbrera</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>anillo</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>rollo</translation>
    </message>
    <message>
        <source>roof vent</source>
        <translation>rejilla de techo</translation>
    </message>
    <message>
        <source>roof-to-wall joint</source>
        <translation>junta del techo con el muro</translation>
    </message>
    <message>
        <source>rotted corner of a crawl door</source>
        <translation>esquina podrida de la puerta al espacio bajo el piso</translation>
    </message>
    <message>
        <source>rotted corner of a door</source>
        <translation>esquina podrida de una puerta</translation>
    </message>
    <message>
        <source>round weep hole in the brick</source>
        <translation>lloradero redondo en el ladrillo</translation>
    </message>
    <message>
        <source>scissors</source>
        <translation>tijeras</translation>
    </message>
    <message>
        <source>scissors for wool</source>
        <translation>tijeras para lana</translation>
    </message>
    <message>
        <source>screw gun</source>
        <translation>atornillador</translation>
    </message>
    <message>
        <source>screw gun or stapler</source>
        <translation>atornillador o engrapadora</translation>
    </message>
    <message>
        <source>screwdriver</source>
        <translation>desarmador</translation>
    </message>
    <message>
        <source>screws with washers</source>
        <translation>tornillos con rondana</translation>
    </message>
    <message>
        <source>seal round the pipe, never its mouth</source>
        <translation>selle alrededor del tubo, nunca su boca</translation>
    </message>
    <message>
        <source>seal the sides only, and leave the edge that drains</source>
        <translation>selle solo los lados, y deje el borde que desagua</translation>
    </message>
    <message>
        <source>sealant bead</source>
        <translation>cordón de sellador</translation>
    </message>
    <message>
        <source>sealant between the wall and the conduit or frame</source>
        <translation>sellador entre el muro y el tubo o marco</translation>
    </message>
    <message>
        <source>sealant for high temperatures</source>
        <translation>sellador de alta temperatura</translation>
    </message>
    <message>
        <source>sealant or metal at the sides and the upper edge</source>
        <translation>sellador o metal en los lados y el borde de arriba</translation>
    </message>
    <message>
        <source>sealant round the conduit only; all else is the utility&apos;s or an electrician&apos;s work</source>
        <translation>sellador solo alrededor del tubo; todo lo demás es trabajo de la compañía de luz o de un electricista</translation>
    </message>
    <message>
        <source>sealant round the outside only, and no metal near live parts; all else is the utility&apos;s or an electrician&apos;s work</source>
        <translation>sellador solo por fuera, y nada de metal cerca de partes con corriente; todo lo demás es trabajo de la compañía de luz o de un electricista</translation>
    </message>
    <message>
        <source>service equipment is opened by the utility or an electrician only</source>
        <translation>el equipo de acometida solo lo abre la compañía de luz o un electricista</translation>
    </message>
    <message>
        <source>service equipment is opened by the utility or an electrician only, and the can drains through its weep</source>
        <translation>el equipo de acometida solo lo abre la compañía de luz o un electricista, y la caja desagua por su lloradero</translation>
    </message>
    <message>
        <source>set</source>
        <translation>juego</translation>
    </message>
    <message>
        <source>sheathing joints</source>
        <translation>juntas del forro</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>sheet metal and high-temperature sealant, never foam; wood stays 1 in away</source>
        <translation>lámina y sellador de alta temperatura, nunca espuma; la madera queda a 1 pulg</translation>
    </message>
    <message>
        <source>sheet metal and high-temperature sealant, never foam; wood stays 2 in away</source>
        <translation>lámina y sellador de alta temperatura, nunca espuma; la madera queda a 2 pulg</translation>
    </message>
    <message>
        <source>sheet metal collar and high-temperature sealant</source>
        <translation>collarín de lámina y sellador de alta temperatura</translation>
    </message>
    <message>
        <source>shower arm behind its trim plate</source>
        <translation>brazo de la regadera detrás de su chapetón</translation>
    </message>
    <message>
        <source>sides only: head flashing and bottom flange stay open to drain</source>
        <translation>solo los lados: el vierteaguas de arriba y la aleta de abajo quedan abiertos para desaguar</translation>
    </message>
    <message>
        <source>siding laps</source>
        <translation>traslapes de las tablas</translation>
    </message>
    <message>
        <source>siding laps let the wall behind them drain and dry</source>
        <translation>los traslapes de las tablas dejan desaguar y secar el muro de atrás</translation>
    </message>
    <message>
        <source>siding laps let the wall behind them dry</source>
        <translation>los traslapes de las tablas dejan secar el muro de atrás</translation>
    </message>
    <message>
        <source>sill weeps, the track drains through them</source>
        <translation>lloraderos del umbral, el riel desagua por ellos</translation>
    </message>
    <message>
        <source>sliding door&apos;s sill weeps</source>
        <translation>lloraderos del umbral de la puerta corrediza</translation>
    </message>
    <message>
        <source>sliding door&apos;s track, inner edge</source>
        <translation>riel de la puerta corrediza, borde interior</translation>
    </message>
    <message>
        <source>slipped joint of a duct</source>
        <translation>unión zafada de un ducto</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>rendija</translation>
    </message>
    <message>
        <source>small hammer</source>
        <translation>martillo chico</translation>
    </message>
    <message>
        <source>smoke alarm&apos;s box</source>
        <translation>caja de la alarma de humo</translation>
    </message>
    <message>
        <source>smoke has to leave, and a finer mesh clogs</source>
        <translation>el humo tiene que salir, y una malla más fina se tapa</translation>
    </message>
    <message>
        <source>smoke has to leave; the mesh stays as it is</source>
        <translation>el humo tiene que salir; la malla se queda como está</translation>
    </message>
    <message>
        <source>soap water</source>
        <translation>agua jabonosa</translation>
    </message>
    <message>
        <source>soffit vent</source>
        <translation>rejilla del sofito</translation>
    </message>
    <message>
        <source>soffit-to-fascia joint</source>
        <translation>junta del sofito con la fascia</translation>
    </message>
    <message>
        <source>soffit-to-wall joint</source>
        <translation>junta del sofito con el muro</translation>
    </message>
    <message>
        <source>spark-arrester mesh of the chimney cap</source>
        <translation>malla matachispas del capuchón de la chimenea</translation>
    </message>
    <message>
        <source>split rim joist</source>
        <translation>vigueta perimetral rajada</translation>
    </message>
    <message>
        <source>split ring for pipes</source>
        <translation>anillo partido para tubos</translation>
    </message>
    <message>
        <source>spring-metal weatherstrip</source>
        <translation>burlete de metal flexible</translation>
    </message>
    <message>
        <source>stains below it may be from bats: look first, and shut none in</source>
        <translation>las manchas abajo pueden ser de murciélagos: mire primero, y no encierre a ninguno</translation>
    </message>
    <message>
        <source>stair stringer at the wall</source>
        <translation>zanca de la escalera en el muro</translation>
    </message>
    <message>
        <source>steam, hot water or gas leaves here when something fails; plugged, it bursts or fills the house</source>
        <translation>por aquí sale vapor, agua caliente o gas cuando algo falla; tapado, revienta o llena la casa</translation>
    </message>
    <message>
        <source>stub-out behind a toilet</source>
        <translation>salida de agua detrás de un inodoro</translation>
    </message>
    <message>
        <source>stub-outs under a sink</source>
        <translation>salidas de agua bajo un fregadero</translation>
    </message>
    <message>
        <source>stub-up behind a toilet</source>
        <translation>salida del piso detrás de un inodoro</translation>
    </message>
    <message>
        <source>stucco-to-screed line</source>
        <translation>línea del estuco con el perfil</translation>
    </message>
    <message>
        <source>supply pipes through the floor</source>
        <translation>tubos de agua por el piso</translation>
    </message>
    <message>
        <source>supply register boot</source>
        <translation>caja de la rejilla de aire</translation>
    </message>
    <message>
        <source>sweep, weatherstrip, gasket, threshold or bottom seal</source>
        <translation>guardapolvo, burlete, empaque, umbral o sello inferior</translation>
    </message>
    <message>
        <source>switch box</source>
        <translation>caja de apagador</translation>
    </message>
    <message>
        <source>taken for a garage, a corridor or another unit, which are parted from the house by what holds back fire</source>
        <translation>tomado por un garaje, un pasillo u otra vivienda, que se separan de la casa con lo que detiene el fuego</translation>
    </message>
    <message>
        <source>taken for a plumbing vent, without which the drains cannot breathe</source>
        <translation>tomado por un respiradero de plomería, sin el cual los desagües no respiran</translation>
    </message>
    <message>
        <source>taken for the joint under the screed: behind the drain line only, never smeared over its nose or holes</source>
        <translation>tomado por la junta bajo el perfil: solo detrás de la línea de desagüe, nunca untado sobre su nariz o agujeros</translation>
    </message>
    <message>
        <source>taken for the stucco-to-screed line, where water behind the stucco runs out</source>
        <translation>tomado por la línea del estuco con el perfil, por donde sale el agua detrás del estuco</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>cinta</translation>
    </message>
    <message>
        <source>the attic breathes through it</source>
        <translation>por ahí respira el ático</translation>
    </message>
    <message>
        <source>the attic is parted from a garage by what holds back fire; plain foam does not</source>
        <translation>el ático se separa de un garaje con lo que detiene el fuego; la espuma común no lo hace</translation>
    </message>
    <message>
        <source>the bath fan blows out through it; a damper that seats, never a plug</source>
        <translation>por ahí sopla el extractor del baño; una compuerta que asiente, nunca un tapón</translation>
    </message>
    <message>
        <source>the can is the utility&apos;s to open; duct seal behind it is an electrician&apos;s work</source>
        <translation>la caja la abre la compañía de luz; la masilla detrás es trabajo de electricista</translation>
    </message>
    <message>
        <source>the crawl space breathes through it</source>
        <translation>por ahí respira el espacio bajo el piso</translation>
    </message>
    <message>
        <source>the damper is opened when there is a fire: it is never sealed shut</source>
        <translation>la compuerta se abre cuando hay fuego: nunca se sella cerrada</translation>
    </message>
    <message>
        <source>the damper is opened when there is a fire: it must go on opening, and what seals it must stand the heat</source>
        <translation>la compuerta se abre cuando hay fuego: debe seguir abriendo, y lo que la sella debe aguantar el calor</translation>
    </message>
    <message>
        <source>the door must go on opening</source>
        <translation>la puerta debe seguir abriendo</translation>
    </message>
    <message>
        <source>the drains cannot breathe without it</source>
        <translation>sin él los desagües no respiran</translation>
    </message>
    <message>
        <source>the flashing&apos;s lower edge stays free to drain</source>
        <translation>el borde de abajo del vierteaguas queda libre para desaguar</translation>
    </message>
    <message>
        <source>the frame drains through them</source>
        <translation>el marco desagua por ellos</translation>
    </message>
    <message>
        <source>the garage is parted from the house by what holds back fire; plain foam does not</source>
        <translation>el garaje se separa de la casa con lo que detiene el fuego; la espuma común no lo hace</translation>
    </message>
    <message>
        <source>the joint moves, and what closes it must hold back fire</source>
        <translation>la junta se mueve, y lo que la cierra debe detener el fuego</translation>
    </message>
    <message>
        <source>the joint moves: mortar and hard foam crack out of it, or crack the wall beside it</source>
        <translation>la junta se mueve: el mortero y la espuma dura se agrietan, o agrietan el muro de al lado</translation>
    </message>
    <message>
        <source>the meter can drains through it</source>
        <translation>la caja del medidor desagua por ahí</translation>
    </message>
    <message>
        <source>the outside of the frame only; an electrician opens the panel, and no metal wool in or near it</source>
        <translation>solo por fuera del marco; el tablero lo abre un electricista, y nada de lana metálica dentro o cerca</translation>
    </message>
    <message>
        <source>the ring only: gas line and valve are not moved</source>
        <translation>solo el anillo: la línea de gas y la válvula no se mueven</translation>
    </message>
    <message>
        <source>the ring only: the regulator&apos;s vent is left alone, and the gas line is not moved</source>
        <translation>solo el anillo: el respiradero del regulador no se toca, y la línea de gas no se mueve</translation>
    </message>
    <message>
        <source>the survey does not say whether this is the joint under the screed or the line that drains the stucco</source>
        <translation>la inspección no dice si esta es la junta bajo el perfil o la línea que desagua el estuco</translation>
    </message>
    <message>
        <source>the survey does not say which of the three lines at the foot of the stucco this is, and two of them drain the wall</source>
        <translation>la inspección no dice cuál de las tres líneas al pie del estuco es esta, y dos de ellas desaguan el muro</translation>
    </message>
    <message>
        <source>the wall drains through the holes and over the nose of the screed; stopped up they hold water in it</source>
        <translation>el muro desagua por los agujeros y sobre la nariz del perfil; tapados retienen el agua</translation>
    </message>
    <message>
        <source>three stacked cents</source>
        <translation>tres centavos apilados</translation>
    </message>
    <message>
        <source>threshold</source>
        <translation>umbral</translation>
    </message>
    <message>
        <source>tin snips</source>
        <translation>tijeras para lámina</translation>
    </message>
    <message>
        <source>tooling stick</source>
        <translation>palito para alisar</translation>
    </message>
    <message>
        <source>top edge of the stucco above the soffit</source>
        <translation>borde superior del estuco arriba del sofito</translation>
    </message>
    <message>
        <source>top of a flue shaft, round the flue</source>
        <translation>parte de arriba del ducto de un tiro, alrededor del tiro</translation>
    </message>
    <message>
        <source>top of the brick behind the frieze board</source>
        <translation>parte de arriba del ladrillo detrás de la tabla de friso</translation>
    </message>
    <message>
        <source>trap seal for a floor drain</source>
        <translation>sello de trampa para una coladera</translation>
    </message>
    <message>
        <source>trap seal under the grate</source>
        <translation>sello de trampa bajo la rejilla</translation>
    </message>
    <message>
        <source>traps in boxes, a set</source>
        <translation>trampas en cajas, un juego</translation>
    </message>
    <message>
        <source>tub edge at the wall</source>
        <translation>orilla de la tina en el muro</translation>
    </message>
    <message>
        <source>tub spout behind its trim plate</source>
        <translation>llave de la tina detrás de su chapetón</translation>
    </message>
    <message>
        <source>two stacked cents</source>
        <translation>dos centavos apilados</translation>
    </message>
    <message>
        <source>utility knife</source>
        <translation>cúter</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>ventilación</translation>
    </message>
    <message>
        <source>vent hole in the rafter blocking</source>
        <translation>agujero de ventilación en el bloqueo de vigas</translation>
    </message>
    <message>
        <source>voltage tester</source>
        <translation>probador de voltaje</translation>
    </message>
    <message>
        <source>walls and floors that hold back fire</source>
        <translation>muros y pisos que detienen el fuego</translation>
    </message>
    <message>
        <source>washer&apos;s supply box</source>
        <translation>caja de agua de la lavadora</translation>
    </message>
    <message>
        <source>waste pipe through the drywall</source>
        <translation>tubo de desagüe por la tablaroca</translation>
    </message>
    <message>
        <source>waste pipe through the floor</source>
        <translation>tubo de desagüe por el piso</translation>
    </message>
    <message>
        <source>water behind the stucco runs out over the screed here</source>
        <translation>aquí el agua detrás del estuco sale sobre el perfil</translation>
    </message>
    <message>
        <source>water has to run off here</source>
        <translation>aquí el agua tiene que escurrir</translation>
    </message>
    <message>
        <source>water has to run off here; a trap seal under the grate lets it down and nothing up</source>
        <translation>aquí el agua tiene que escurrir; un sello de trampa bajo la rejilla la deja bajar y nada subir</translation>
    </message>
    <message>
        <source>water heater&apos;s relief pipe</source>
        <translation>tubo de alivio del calentador de agua</translation>
    </message>
    <message>
        <source>water leaves here: condensate, a drain pan, a floor or a wall</source>
        <translation>por aquí sale el agua: condensado, una charola, un piso o un muro</translation>
    </message>
    <message>
        <source>water main through the foundation</source>
        <translation>toma de agua por el cimiento</translation>
    </message>
    <message>
        <source>weatherstrip</source>
        <translation>burlete</translation>
    </message>
    <message>
        <source>weatherstrip of a door</source>
        <translation>burlete de una puerta</translation>
    </message>
    <message>
        <source>weep</source>
        <translation>lloradero</translation>
    </message>
    <message>
        <source>weep screed</source>
        <translation>perfil de goteo</translation>
    </message>
    <message>
        <source>weeps drain the wall behind the brick and let it dry; never mortar or sealant</source>
        <translation>los lloraderos desaguan el muro detrás del ladrillo y lo dejan secar; nunca mortero ni sellador</translation>
    </message>
    <message>
        <source>weeps in brick or stone</source>
        <translation>lloraderos en ladrillo o piedra</translation>
    </message>
    <message>
        <source>weeps of a window whose frame is cracked open to the wall</source>
        <translation>lloraderos de una ventana cuyo marco está roto hacia el muro</translation>
    </message>
    <message>
        <source>weeps of casing beads and screeds drain the stucco; stopped up they hold water in the wall</source>
        <translation>los lloraderos de remates y perfiles desaguan el estuco; tapados retienen agua en el muro</translation>
    </message>
    <message>
        <source>weeps of window frames and sliding-door sills</source>
        <translation>lloraderos de marcos de ventana y umbrales de puertas corredizas</translation>
    </message>
    <message>
        <source>weeps whose sides are brick, stone or masonry</source>
        <translation>lloraderos cuyos lados son ladrillo, piedra o mampostería</translation>
    </message>
    <message>
        <source>what closes it must be approved to hold back flame and smoke; plain foam is not</source>
        <translation>lo que lo cierra debe estar aprobado para detener llama y humo; la espuma común no lo está</translation>
    </message>
    <message>
        <source>what is behind it breathes through it</source>
        <translation>lo que está detrás respira por ahí</translation>
    </message>
    <message>
        <source>what is behind it drains and dries through it</source>
        <translation>lo que está detrás desagua y seca por ahí</translation>
    </message>
    <message>
        <source>what runs down behind the cladding comes out over head flashings, bottom flanges and through-wall flashings</source>
        <translation>lo que baja detrás del revestimiento sale sobre los vierteaguas de arriba, las aletas de abajo y los vierteaguas que atraviesan el muro</translation>
    </message>
    <message>
        <source>window casing to drywall</source>
        <translation>moldura de ventana con tablaroca</translation>
    </message>
    <message>
        <source>window frame to cladding, at the sides</source>
        <translation>marco de ventana con revestimiento, a los lados</translation>
    </message>
    <message>
        <source>window sash</source>
        <translation>hoja de ventana</translation>
    </message>
    <message>
        <source>window sash over a hollow frame</source>
        <translation>hoja de ventana sobre un marco hueco</translation>
    </message>
    <message>
        <source>window weeps</source>
        <translation>lloraderos de ventana</translation>
    </message>
    <message>
        <source>window weeps, the frame drains through them</source>
        <translation>lloraderos de ventana, el marco desagua por ellos</translation>
    </message>
    <message>
        <source>wire hole in the bottom plate</source>
        <translation>agujero de cable en la solera inferior</translation>
    </message>
    <message>
        <source>wire hole in the top plate</source>
        <translation>agujero de cable en la solera superior</translation>
    </message>
    <message>
        <source>wire through the top plate</source>
        <translation>cable por la solera superior</translation>
    </message>
    <message>
        <source>young in the nest cannot leave yet</source>
        <translation>las crías del nido aún no pueden salir</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloque</translation>
    </message>
    <message>
        <source>brick</source>
        <translation>ladrillo</translation>
    </message>
    <message>
        <source>concrete</source>
        <translation>concreto</translation>
    </message>
    <message>
        <source>drywall</source>
        <translation>tablaroca</translation>
    </message>
    <message>
        <source>earth</source>
        <translation>tierra</translation>
    </message>
    <message>
        <source>fascia</source>
        <translation>fascia</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>vidrio</translation>
    </message>
    <message>
        <source>membrane</source>
        <translation>membrana</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>metal</translation>
    </message>
    <message>
        <source>shingle</source>
        <translation>teja asfáltica</translation>
    </message>
    <message>
        <source>stucco</source>
        <translation>estuco</translation>
    </message>
    <message>
        <source>tile</source>
        <translation>teja</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>madera</translation>
    </message>
    <message>
        <source>attic and other hidden spaces</source>
        <translation>ático y otros espacios ocultos</translation>
    </message>
    <message>
        <source>crawl space</source>
        <translation>espacio bajo el piso</translation>
    </message>
    <message>
        <source>garage and porches</source>
        <translation>garaje y porches</translation>
    </message>
    <message>
        <source>on the roof</source>
        <translation>en el techo de la casa</translation>
    </message>
    <message>
        <source>outside, from a ladder</source>
        <translation>afuera, desde una escalera</translation>
    </message>
    <message>
        <source>outside, from the ground</source>
        <translation>afuera, desde el suelo</translation>
    </message>
    <message>
        <source>rooms</source>
        <translation>cuartos</translation>
    </message>
</context>
<context>
    <name>closings</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 in %2 (seen: %3)</source>
        <translation>%1 en %2 (visto: %3)</translation>
    </message>
    <message>
        <source>%1: nothing waits for it.</source>
        <translation>%1: nada espera por este animal.</translation>
    </message>
    <message>
        <source>%1: these closings leave it a way out. They keep it out of the rooms and do not drive it away.</source>
        <translation>%1: estos cierres le dejan una salida. Lo mantienen fuera de los cuartos y no lo ahuyentan.</translation>
    </message>
    <message>
        <source>%1: no way out is known, and these closings do not touch its space. Look for the way it came.</source>
        <translation>%1: no se conoce salida, y estos cierres no tocan su espacio. Busque por dónde entró.</translation>
    </message>
    <message>
        <source>%1 must not be shut in. Its main way out stays open until it is gone: %2.</source>
        <translation>%1 no debe quedar encerrado. Su salida principal queda abierta hasta que se haya ido: %2.</translation>
    </message>
    <message>
        <source>%1 must not be shut in. No way out is known, so all around its space waits until it is gone: %2.</source>
        <translation>%1 no debe quedar encerrado. No se conoce salida, así que todo alrededor de su espacio espera hasta que se haya ido: %2.</translation>
    </message>
    <message>
        <source>The tables do not know this animal: nobody closes these before somebody who knows it has looked.</source>
        <translation>Las tablas no conocen este animal: nadie cierra estos antes de que haya revisado alguien que lo conozca.</translation>
    </message>
    <message>
        <source>%1. (%2)</source>
        <translation>%1. (%2)</translation>
    </message>
    <message>
        <source>Here: %1.</source>
        <translation>Aquí: %1.</translation>
    </message>
    <message>
        <source>Not now: %1. Begin on %2 at the earliest. (%3)</source>
        <translation>Ahora no: %1. Empiece el %2 como muy pronto. (%3)</translation>
    </message>
    <message>
        <source>Once it is gone, on %1 at the earliest, close what waits.</source>
        <translation>Cuando se haya ido, el %1 como muy pronto, cierre lo que espera.</translation>
    </message>
    <message>
        <source>Caution: %1 (%2)</source>
        <translation>Cuidado: %1 (%2)</translation>
    </message>
    <message>
        <source>This survey has no outdoors and no source space: no way in can begin, so there is nothing to plan.</source>
        <translation>Esta inspección no tiene exterior ni espacio de origen: ningún camino puede empezar, así que no hay nada que planear.</translation>
    </message>
    <message>
        <source>This survey has no living space: no way in can end, so there is nothing to plan.</source>
        <translation>Esta inspección no tiene espacio habitado: ningún camino puede terminar, así que no hay nada que planear.</translation>
    </message>
    <message>
        <source>No animals are chosen, so there is no plan yet. Choose above whom to keep out. The price curve and single closings do not need them.</source>
        <translation>No hay animales elegidos, así que todavía no hay plan. Elija arriba a cuáles dejar fuera. La curva de precios y los cierres sueltos no los necesitan.</translation>
    </message>
    <message>
        <source>There is a way in that must not or cannot be closed: %1.</source>
        <translation>Hay un camino de entrada que no debe o no puede cerrarse: %1.</translation>
    </message>
    <message>
        <source>It is open to %1, by %2.</source>
        <translation>Está abierto para %1, por %2.</translation>
    </message>
    <message>
        <source>%1 stays open</source>
        <translation>%1 queda abierto</translation>
    </message>
    <message>
        <source>Measure these gaps anew, look for another place to stop the way, or plan against other animals.</source>
        <translation>Mida de nuevo estos huecos, busque otro lugar donde cortar el camino, o planee contra otros animales.</translation>
    </message>
    <message>
        <source>None of these animals can be shut out as things stand.</source>
        <translation>Tal como está, no se puede dejar fuera a ninguno de estos animales.</translation>
    </message>
    <message>
        <source>Can be shut out: %1. Cannot: %2.</source>
        <translation>Se puede dejar fuera a: %1. No se puede a: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Close call: %1</source>
        <translation>Por poco: %1</translation>
    </message>
    <message>
        <source>It stops %1 by %2 of its size, less than that size is known.</source>
        <translation>Detiene a %1 por %2 de su tamaño, menos de lo que se conoce ese tamaño.</translation>
    </message>
    <message>
        <source>At the end: %1</source>
        <translation>Al final: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 x %2, %3</source>
        <translation>%1 x %2, %3</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 and %2 x %3, %4</source>
        <translation>%1 y %2 x %3, %4</translation>
    </message>
    <message>
        <source>%1, %2 ml</source>
        <translation>%1, %2 ml</translation>
    </message>
    <message>
        <source>%1, %2 cm²</source>
        <translation>%1, %2 cm²</translation>
    </message>
    <message>
        <source>%1, %2 m</source>
        <translation>%1, %2 m</translation>
    </message>
    <message>
        <source>%1, %2 pieces</source>
        <translation>%1, %2 piezas</translation>
    </message>
    <message>
        <source>Settings %1 to %2 of the ladder.</source>
        <translation>Posiciones %1 a %2 de la escalera.</translation>
    </message>
    <message>
        <source>Setting %1 of the ladder.</source>
        <translation>Posición %1 de la escalera.</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>Not offered here, and why</source>
        <translation>Lo que no se ofrece aquí, y por qué</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>closed at the price of the survey</source>
        <translation>cerrado al precio de la inspección</translation>
    </message>
    <message>
        <source>On a later visit, when the animals are gone: %1</source>
        <translation>En otra visita, cuando los animales se hayan ido: %1</translation>
    </message>
    <message>
        <source>%1, the ladder set once</source>
        <translation>%1, la escalera puesta una vez</translation>
    </message>
    <message>
        <source>%1, the ladder set %2 times</source>
        <translation>%1, la escalera puesta %2 veces</translation>
    </message>
    <message>
        <source>%1, perhaps %2, %3 pieces</source>
        <translation>%1, quizá %2, %3 piezas</translation>
    </message>
    <message>
        <source>%1, perhaps %2</source>
        <translation>%1, quizá %2</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>según el plan</translation>
    </message>
    <message>
        <source>rodents gnaw through it</source>
        <translation>los roedores lo roen</translation>
    </message>
    <message>
        <source>leaves %1 open</source>
        <translation>deja %1 abierto</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Cuidado:</translation>
    </message>
    <message>
        <source>Gap:</source>
        <translation>Hueco:</translation>
    </message>
    <message>
        <source>Rodents gnaw through it.</source>
        <translation>Los roedores lo roen.</translation>
    </message>
    <message>
        <source>Material:</source>
        <translation>Material:</translation>
    </message>
    <message>
        <source>Two people.</source>
        <translation>Dos personas.</translation>
    </message>
    <message>
        <source>When the plan is done up to here, %1 is still open.</source>
        <translation>Con el plan hecho hasta aquí, %1 sigue abierto.</translation>
    </message>
    <message>
        <source>When the plan is done up to here, no way in is left open.</source>
        <translation>Con el plan hecho hasta aquí, no queda abierto ningún camino de entrada.</translation>
    </message>
    <message>
        <source>shut out</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>perhaps in by %1</source>
        <translation>quizá entra por %1</translation>
    </message>
    <message>
        <source>%1: no way in is left, as far as this survey goes.</source>
        <translation>%1: no queda camino de entrada, hasta donde llega esta inspección.</translation>
    </message>
    <message>
        <source>%1 still gets in %2. Smallest gap: %3.</source>
        <translation>%1 todavía entra %2. Hueco más estrecho: %3.</translation>
    </message>
    <message>
        <source>%1 still gets in %2. It gnaws through what closes: %3.</source>
        <translation>%1 todavía entra %2. Roe lo que cierra: %3.</translation>
    </message>
    <message>
        <source>from %1 by: %2; into %3</source>
        <translation>desde %1 por: %2; hasta %3</translation>
    </message>
    <message>
        <source>; then </source>
        <translation>; luego </translation>
    </message>
    <message>
        <source>No price shuts the widest way in: %1 at %2: %3.</source>
        <translation>A ningún precio se cierra el camino más ancho: %1 en %2: %3.</translation>
    </message>
    <message>
        <source>Nothing is ticked: the house as it stands. Slide along the price.</source>
        <translation>No hay nada marcado: la casa tal como está. Deslice por el precio.</translation>
    </message>
    <message>
        <source>For %1 nothing %2 wide or wider gets in.</source>
        <translation>Por %1 no entra nada de %2 de ancho o más.</translation>
    </message>
    <message>
        <source>What is ticked leaves no way in at all.</source>
        <translation>Lo marcado no deja ningún camino de entrada.</translation>
    </message>
    <message>
        <source>The whole plan fits in %1. A quote adds whole packs, the least charge of a visit, overhead and tax.</source>
        <translation>El plan completo cabe en %1. Una cotización suma paquetes enteros, el cargo mínimo por visita, gastos generales e impuesto.</translation>
    </message>
    <message>
        <source>Within %1: what is ticked costs %2; %3 is still to pay for the whole plan.</source>
        <translation>Dentro de %1: lo marcado cuesta %2; faltan %3 para el plan completo.</translation>
    </message>
    <message>
        <source>%1 The widest way that stays open to an animal is %2, %3.</source>
        <translation>%1 El camino más ancho que queda abierto a un animal es de %2, %3.</translation>
    </message>
    <message>
        <source>Not before the animal that lives here has left.</source>
        <translation>No antes de que se haya ido el animal que vive aquí.</translation>
    </message>
    <message>
        <source>in by %1</source>
        <translation>entra por %1</translation>
    </message>
    <message>
        <source>For %1 no animal planned against has a way in left.</source>
        <translation>Por %1 no le queda camino de entrada a ningún animal del plan.</translation>
    </message>
    <message>
        <source>%1 No price shuts out what needs less than %2: %3: %4.</source>
        <translation>%1 A ningún precio queda fuera lo que necesita menos de %2: %3: %4.</translation>
    </message>
    <message>
        <source>The widest way left is %1, counted with its plus-minus. As tight can be had for %2.</source>
        <translation>El camino más ancho que queda es de %1, contado con su más o menos. Lo mismo se logra por %2.</translation>
    </message>
    <message>
        <source>The widest way left is %1, counted with its plus-minus.</source>
        <translation>El camino más ancho que queda es de %1, contado con su más o menos.</translation>
    </message>
</context>
<context>
    <name>edit</name>
    <message>
        <source>changes of “%1”</source>
        <translation>cambios de “%1”</translation>
    </message>
    <message>
        <source>width of “%1”</source>
        <translation>ancho de “%1”</translation>
    </message>
    <message>
        <source>size of “%1”</source>
        <translation>tamaño de “%1”</translation>
    </message>
    <message>
        <source>how “%1” is known</source>
        <translation>cómo se conoce “%1”</translation>
    </message>
    <message>
        <source>plus or minus of “%1”</source>
        <translation>más o menos de “%1”</translation>
    </message>
    <message>
        <source>name of “%1”</source>
        <translation>nombre de “%1”</translation>
    </message>
    <message>
        <source>note on “%1”</source>
        <translation>nota sobre “%1”</translation>
    </message>
    <message>
        <source>photo of “%1”</source>
        <translation>foto de “%1”</translation>
    </message>
    <message>
        <source>place of “%1”</source>
        <translation>lugar de “%1”</translation>
    </message>
    <message>
        <source>sides of “%1”</source>
        <translation>lados de “%1”</translation>
    </message>
    <message>
        <source>new gap “%1”</source>
        <translation>hueco nuevo “%1”</translation>
    </message>
    <message>
        <source>removal of “%1”</source>
        <translation>quitar “%1”</translation>
    </message>
    <message>
        <source>new space “%1”</source>
        <translation>espacio nuevo “%1”</translation>
    </message>
    <message>
        <source>“%1” is closed</source>
        <translation>“%1” está cerrado</translation>
    </message>
    <message>
        <source>“%1” is open</source>
        <translation>“%1” está abierto</translation>
    </message>
    <message>
        <source>the job file moves</source>
        <translation>el archivo del trabajo cambia de lugar</translation>
    </message>
    <message>
        <source>new part “%1”</source>
        <translation>parte nueva “%1”</translation>
    </message>
</context>
<context>
    <name>feature</name>
    <message>
        <source>from the west corner</source>
        <translation>desde la esquina oeste</translation>
    </message>
    <message>
        <source>from the east corner</source>
        <translation>desde la esquina este</translation>
    </message>
    <message>
        <source>from the south corner</source>
        <translation>desde la esquina sur</translation>
    </message>
    <message>
        <source>from the north corner</source>
        <translation>desde la esquina norte</translation>
    </message>
    <message>
        <source>from the left corner</source>
        <translation>desde la esquina izquierda</translation>
    </message>
    <message>
        <source>from the right corner</source>
        <translation>desde la esquina derecha</translation>
    </message>
    <message>
        <source>from the front corner</source>
        <translation>desde la esquina de enfrente</translation>
    </message>
    <message>
        <source>from the back corner</source>
        <translation>desde la esquina del fondo</translation>
    </message>
    <message>
        <source>from the west end</source>
        <translation>desde el extremo oeste</translation>
    </message>
    <message>
        <source>from the east end</source>
        <translation>desde el extremo este</translation>
    </message>
    <message>
        <source>from the south end</source>
        <translation>desde el extremo sur</translation>
    </message>
    <message>
        <source>from the north end</source>
        <translation>desde el extremo norte</translation>
    </message>
    <message>
        <source>from the left end</source>
        <translation>desde el extremo izquierdo</translation>
    </message>
    <message>
        <source>from the right end</source>
        <translation>desde el extremo derecho</translation>
    </message>
    <message>
        <source>from the front end</source>
        <translation>desde el extremo de enfrente</translation>
    </message>
    <message>
        <source>from the back end</source>
        <translation>desde el extremo del fondo</translation>
    </message>
    <message>
        <source>%1, inside, %2</source>
        <comment>wall, room</comment>
        <translation>%1, por dentro, %2</translation>
    </message>
    <message>
        <source>gable, %1</source>
        <comment>wall</comment>
        <translation>hastial, %1</translation>
    </message>
    <message>
        <source>%1, toward %2</source>
        <comment>partition, room</comment>
        <translation>%1, hacia %2</translation>
    </message>
    <message>
        <source>ceiling, %1</source>
        <comment>room</comment>
        <translation>techo, %1</translation>
    </message>
    <message>
        <source>floor, %1</source>
        <comment>room</comment>
        <translation>piso, %1</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>techo de la casa</translation>
    </message>
    <message>
        <source>eave, %1</source>
        <comment>wall</comment>
        <translation>alero, %1</translation>
    </message>
    <message>
        <source>foundation, %1</source>
        <comment>wall</comment>
        <translation>cimiento, %1</translation>
    </message>
    <message>
        <source>edge of the floor, %1</source>
        <comment>wall</comment>
        <translation>canto del piso, %1</translation>
    </message>
    <message>
        <source>from the west side</source>
        <translation>desde el lado oeste</translation>
    </message>
    <message>
        <source>from the left side</source>
        <translation>desde el lado izquierdo</translation>
    </message>
    <message>
        <source>from the south side</source>
        <translation>desde el lado sur</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>desde el frente</translation>
    </message>
    <message>
        <source>%1, %2 %3, %4 %5</source>
        <comment>what, length, from where, length, from where</comment>
        <translation>%1, a %2 %3, a %4 %5</translation>
    </message>
    <message>
        <source>%1, %2 %3, %4 up</source>
        <comment>what, length, from where, height</comment>
        <translation>%1, a %2 %3, a %4 de altura</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <comment>what, length, from where</comment>
        <translation>%1, a %2 %3</translation>
    </message>
    <message>
        <source>%1, %2 up</source>
        <comment>what, height</comment>
        <translation>%1, a %2 de altura</translation>
    </message>
    <message>
        <source>%1 by the %2</source>
        <comment>what, room</comment>
        <translation>%1, junto a %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what, where</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>film</name>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 no se puede escribir.</translation>
    </message>
    <message>
        <source>The ride ended before it was saved.</source>
        <translation>El recorrido terminó antes de guardarse.</translation>
    </message>
</context>
<context>
    <name>fit</name>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>fits</source>
        <comment>an animal in a gap</comment>
        <translation>pasa</translation>
    </message>
    <message>
        <source>perhaps</source>
        <comment>an animal fits in a gap</comment>
        <translation>quizá</translation>
    </message>
    <message>
        <source>kept out</source>
        <comment>an animal by a gap</comment>
        <translation>no pasa</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>Job files</source>
        <translation>Archivos de trabajo</translation>
    </message>
    <message>
        <source>House files</source>
        <translation>Archivos de casa</translation>
    </message>
    <message>
        <source>Animals, treatments and duties</source>
        <translation>Animales, cierres y funciones</translation>
    </message>
    <message>
        <source>How ways in are ranked</source>
        <translation>Cómo se ordenan los caminos</translation>
    </message>
    <message>
        <source>Plans: what to close</source>
        <translation>Planes: qué cerrar</translation>
    </message>
    <message>
        <source>Quotes</source>
        <translation>Cotizaciones</translation>
    </message>
    <message>
        <source>Your own prices</source>
        <translation>Sus propios precios</translation>
    </message>
    <message>
        <source>When the work is done</source>
        <translation>Al terminar el trabajo</translation>
    </message>
    <message>
        <source>3D files of others</source>
        <translation>Archivos 3D de otros</translation>
    </message>
    <message>
        <source>3D files out</source>
        <translation>Archivos 3D de salida</translation>
    </message>
    <message>
        <source>The command line</source>
        <translation>La línea de comandos</translation>
    </message>
    <message>
        <source>What it does not do yet</source>
        <translation>Lo que todavía no hace</translation>
    </message>
    <message>
        <source>The window</source>
        <translation>La ventana</translation>
    </message>
</context>
<context>
    <name>lengths</name>
    <message>
        <source>under %1 in</source>
        <translation>menos de %1 pulg</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg</translation>
    </message>
    <message>
        <source>under %1 mm</source>
        <translation>menos de %1 mm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>inches, millimeters</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 m (%2 ft)</source>
        <translation>%1 m (%2 pies)</translation>
    </message>
</context>
<context>
    <name>model_search</name>
    <message>
        <source>Reading the model</source>
        <translation>Leyendo el modelo</translation>
    </message>
    <message>
        <source>Mending its parts</source>
        <translation>Reparando sus partes</translation>
    </message>
    <message>
        <source>Telling air from walls</source>
        <translation>Separando el aire de los muros</translation>
    </message>
    <message>
        <source>Looking for rooms and cavities</source>
        <translation>Buscando cuartos y cavidades</translation>
    </message>
    <message>
        <source>Measuring gaps</source>
        <translation>Midiendo huecos</translation>
    </message>
    <message>
        <source>Looking where parts touch</source>
        <translation>Viendo dónde se tocan las partes</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Trabajando</translation>
    </message>
    <message numerus="yes">
        <source>None of the file&apos;s %n part(s) of the class %1 came through.</source>
        <translation>
            <numerusform>No llegó la única parte del archivo de la clase %1.</numerusform>
            <numerusform>No llegó ninguna de las %n partes del archivo de la clase %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of the file&apos;s %n part(s) of the class %1, only %2 came through.</source>
        <translation>
            <numerusform>De la única parte del archivo de la clase %1, solo llegaron %2.</numerusform>
            <numerusform>De las %n partes del archivo de la clase %1, solo llegaron %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Say where the job file is to stand.</source>
        <translation>Diga dónde se guarda el archivo del trabajo.</translation>
    </message>
    <message>
        <source>Give the job file a name that ends in .yaml.</source>
        <translation>Dé al archivo del trabajo un nombre que termine en .yaml.</translation>
    </message>
    <message>
        <source>There is no such folder; make it first.</source>
        <translation>No existe esa carpeta; créela primero.</translation>
    </message>
    <message>
        <source>A folder has this name; give another one.</source>
        <translation>Una carpeta tiene ese nombre; dé otro.</translation>
    </message>
    <message>
        <source>This is the model itself; give another name.</source>
        <translation>Ese es el modelo mismo; dé otro nombre.</translation>
    </message>
    <message>
        <source>There is a file of this name already; give another one.</source>
        <translation>Ya hay un archivo con ese nombre; dé otro.</translation>
    </message>
</context>
<context>
    <name>new_house</name>
    <message>
        <source>An outline has three corners or more: one a line, such as 0 ft, 0 ft.</source>
        <translation>Un contorno tiene tres esquinas o más: una por línea, como 0 ft, 0 ft.</translation>
    </message>
    <message>
        <source>Give %1 corners at most.</source>
        <translation>Dé %1 esquinas como máximo.</translation>
    </message>
    <message>
        <source>The wall from corner %1 to corner %2 is shorter than %3.</source>
        <translation>El muro de la esquina %1 a la esquina %2 mide menos de %3.</translation>
    </message>
    <message>
        <source>Corner %1 lies more than 500 m from the first one.</source>
        <translation>La esquina %1 está a más de 500 m de la primera.</translation>
    </message>
    <message>
        <source>The walls from corner %1 and from corner %2 cross or touch; list the corners in order, round the house.</source>
        <translation>Los muros desde la esquina %1 y desde la esquina %2 se cruzan o se tocan; anote las esquinas en orden, alrededor de la casa.</translation>
    </message>
    <message>
        <source>An outline of less than 12 square meters is no house.</source>
        <translation>Un contorno de menos de 12 metros cuadrados no es una casa.</translation>
    </message>
    <message>
        <source>The walls at corner %1 meet too sharply.</source>
        <translation>Los muros de la esquina %1 forman un ángulo demasiado agudo.</translation>
    </message>
    <message>
        <source>Leave corner %1 out: the wall runs straight on there.</source>
        <translation>Quite la esquina %1: ahí el muro sigue derecho.</translation>
    </message>
    <message>
        <source>At least %1 is needed here.</source>
        <translation>Aquí hace falta %1 por lo menos.</translation>
    </message>
    <message>
        <source>At most %1 fits here.</source>
        <translation>Aquí cabe %1 como máximo.</translation>
    </message>
    <message>
        <source>The two wings must leave %1 between them: make them shorter along the street, or the house longer.</source>
        <translation>Las dos alas deben dejar %1 entre ellas: hágalas más cortas a lo largo de la calle, o la casa más larga.</translation>
    </message>
    <message>
        <source>The wing must be shorter along the street than the house, by %1 on each open side.</source>
        <translation>El ala debe ser más corta que la casa a lo largo de la calle, por %1 en cada lado abierto.</translation>
    </message>
    <message>
        <source>A house of typed corners gets no garage here; add it to the house file by hand.</source>
        <translation>Una casa de esquinas escritas no lleva garaje aquí; agréguelo a mano en el archivo de la casa.</translation>
    </message>
    <message>
        <source>There is no room for it: the house must be %1 long or longer.</source>
        <translation>No cabe: la casa debe tener %1 de largo o más.</translation>
    </message>
    <message>
        <source>There is no room for it: the main body must be %1 deep or deeper.</source>
        <translation>No cabe: el cuerpo principal debe tener %1 de fondo o más.</translation>
    </message>
    <message>
        <source>No wall of this outline can carry a gable; choose another roof.</source>
        <translation>Ningún muro de este contorno puede llevar hastial; elija otro techo.</translation>
    </message>
    <message>
        <source>A shed roof needs square corners, and one wall that none reaches past; choose another roof.</source>
        <translation>Un techo de un agua necesita esquinas a escuadra y un muro que ningún otro rebase; elija otro techo.</translation>
    </message>
    <message>
        <source>Give the house a name, such as the customer&apos;s or the street and number.</source>
        <translation>Dé un nombre a la casa, como el del cliente o la calle y el número.</translation>
    </message>
    <message>
        <source>Say in which folder the files are to stand.</source>
        <translation>Diga en qué carpeta se guardan los archivos.</translation>
    </message>
    <message>
        <source>There is no such folder; make it first.</source>
        <translation>No existe esa carpeta; créela primero.</translation>
    </message>
    <message>
        <source>Nothing can be written into this folder; choose another one.</source>
        <translation>No se puede escribir en esta carpeta; elija otra.</translation>
    </message>
    <message>
        <source>%1 is in this folder already; give the house another name, or choose another folder.</source>
        <translation>%1 ya está en esta carpeta; dé otro nombre a la casa, o elija otra carpeta.</translation>
    </message>
</context>
<context>
    <name>picture</name>
    <message>
        <source>
gap %1: position not given</source>
        <translation>
hueco %1: posición no indicada</translation>
    </message>
    <message>
        <source>
gaps %1 to %2: positions not given</source>
        <translation>
huecos %1 a %2: posiciones no indicadas</translation>
    </message>
    <message>
        <source>position not given</source>
        <translation>posición no indicada</translation>
    </message>
    <message>
        <source>Smallest gap: %1</source>
        <translation>Hueco más estrecho: %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingDetail</name>
    <message>
        <source>C&amp;lose it with</source>
        <translation>Cerrar&amp;lo con</translation>
    </message>
    <message>
        <source>Close it with</source>
        <translation>Cerrarlo con</translation>
    </message>
    <message>
        <source>Everything that fits this gap and may be used here, cheapest first</source>
        <translation>Todo lo que sirve para este hueco y se puede usar aquí, primero lo más barato</translation>
    </message>
    <message>
        <source>What it takes</source>
        <translation>Lo que se necesita</translation>
    </message>
    <message>
        <source>%1 must not be used here: %2 (%3)</source>
        <translation>%1 no se debe usar aquí: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingsHead</name>
    <message>
        <source>Not closed with %1, %2: %3 (%4)</source>
        <translation>No se cierra con %1, %2: %3 (%4)</translation>
    </message>
    <message>
        <source>Price of what is ticked</source>
        <translation>Precio de lo marcado</translation>
    </message>
    <message numerus="yes">
        <source>%n gaps ticked</source>
        <translation>
            <numerusform>%n hueco marcado</numerusform>
            <numerusform>%n huecos marcados</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, not planned against</source>
        <translation>%1, fuera del plan</translation>
    </message>
    <message>
        <source>%1
about %2</source>
        <translation>%1
unas %2</translation>
    </message>
    <message>
        <source>Prices are before call-out, overhead, tax and whole packs.</source>
        <translation>Precios sin visita, gastos generales, impuesto ni paquetes enteros.</translation>
    </message>
    <message numerus="yes">
        <source>Whole plan: %n gaps, %1, about %2, before call-out, overhead, tax and whole packs.</source>
        <translation>
            <numerusform>Plan completo: %n hueco, %1, unas %2, sin visita, gastos generales, impuesto ni paquetes enteros.</numerusform>
            <numerusform>Plan completo: %n huecos, %1, unas %2, sin visita, gastos generales, impuesto ni paquetes enteros.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Whole plan: %n gaps, %1, before call-out, overhead, tax and whole packs.</source>
        <translation>
            <numerusform>Plan completo: %n hueco, %1, sin visita, gastos generales, impuesto ni paquetes enteros.</numerusform>
            <numerusform>Plan completo: %n huecos, %1, sin visita, gastos generales, impuesto ni paquetes enteros.</numerusform>
        </translation>
    </message>
    <message>
        <source>Prices and times are made-up examples, not an offer.</source>
        <translation>Los precios y los tiempos son ejemplos inventados, no una oferta.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingsList</name>
    <message>
        <source>Gaps to close</source>
        <translation>Huecos por cerrar</translation>
    </message>
    <message>
        <source>Tick what is to be closed, with a click or the space bar. Click a row, or press Enter, to see what it takes.</source>
        <translation>Marque lo que se va a cerrar, con un clic o la barra espaciadora. Haga clic en una fila, u oprima Entrar, para ver lo que se necesita.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No plan could be made</source>
        <translation>No se pudo hacer un plan</translation>
    </message>
    <message>
        <source>There is nothing to plan</source>
        <translation>No hay nada que planear</translation>
    </message>
    <message>
        <source>No plan: there is a way in that must not or cannot be closed</source>
        <translation>Sin plan: hay un camino de entrada que no debe o no puede cerrarse</translation>
    </message>
    <message>
        <source>Nothing needs closing</source>
        <translation>No hace falta cerrar nada</translation>
    </message>
    <message>
        <source>None of these animals has a way in, as far as this survey goes.</source>
        <translation>Ninguno de estos animales tiene por dónde entrar, hasta donde llega esta inspección.</translation>
    </message>
    <message>
        <source>Wrong closings to open again</source>
        <translation>Cierres equivocados que hay que volver a abrir</translation>
    </message>
    <message>
        <source>Animals that live in the house</source>
        <translation>Animales que viven en la casa</translation>
    </message>
    <message numerus="yes">
        <source>Before the work (%n)</source>
        <translation>
            <numerusform>Antes del trabajo (%n)</numerusform>
            <numerusform>Antes del trabajo (%n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not needed for these animals (%n)</source>
        <translation>
            <numerusform>No hacen falta para estos animales (%n)</numerusform>
            <numerusform>No hacen falta para estos animales (%n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Can be closed (%n)</source>
        <translation>
            <numerusform>Se pueden cerrar (%n)</numerusform>
            <numerusform>Se pueden cerrar (%n)</numerusform>
        </translation>
    </message>
    <message>
        <source>What stays open, and why</source>
        <translation>Lo que queda abierto, y por qué</translation>
    </message>
    <message>
        <source>To bring for what is ticked</source>
        <translation>Qué llevar para lo marcado</translation>
    </message>
    <message>
        <source>Why nothing cheaper will do</source>
        <translation>Por qué no basta con algo más barato</translation>
    </message>
    <message>
        <source>%1, chosen by hand</source>
        <translation>%1, elegido a mano</translation>
    </message>
    <message>
        <source>one caution</source>
        <translation>un cuidado</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 cuidados</translation>
    </message>
    <message>
        <source>waits until an animal has left</source>
        <translation>espera a que se vaya un animal</translation>
    </message>
    <message>
        <source>Air: %1</source>
        <translation>Aire: %1</translation>
    </message>
    <message>
        <source>Nothing is ticked that takes any.</source>
        <translation>No hay nada marcado que lo necesite.</translation>
    </message>
    <message>
        <source>Open; a click or Enter folds it</source>
        <translation>Abierto; un clic o Entrar lo pliega</translation>
    </message>
    <message>
        <source>Folded; a click or Enter opens it</source>
        <translation>Plegado; un clic o Entrar lo abre</translation>
    </message>
    <message>
        <source>How they leave the house, and what to mind</source>
        <translation>Cómo salen de la casa, y qué cuidar</translation>
    </message>
    <message>
        <source>To check</source>
        <translation>Por revisar</translation>
    </message>
    <message>
        <source>None of them has to leave for these closings.</source>
        <translation>Ninguno tiene que irse para estos cierres.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ClosingsPanel</name>
    <message>
        <source>Closings</source>
        <translation>Cierres</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DraftStore</name>
    <message>
        <source>No draft can be kept in %1. Save often.</source>
        <translation>No se puede guardar un borrador en %1. Guarde seguido.</translation>
    </message>
    <message>
        <source>The draft could not be written. Save often. (%1)</source>
        <translation>No se pudo escribir el borrador. Guarde seguido. (%1)</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ExampleCard</name>
    <message>
        <source>Stucco house on a slab</source>
        <translation>Casa de estuco sobre losa</translation>
    </message>
    <message>
        <source>One story with a garage: the joint at the foot of the stucco, and the doors.</source>
        <translation>Un piso con garaje: la junta al pie del estuco, y las puertas.</translation>
    </message>
    <message>
        <source>Two stories with gables</source>
        <translation>Dos pisos con hastiales</translation>
    </message>
    <message>
        <source>From the eaves and the gable vents into the attic, and down into the rooms.</source>
        <translation>De los aleros y las rejillas de hastial al ático, y de ahí a los cuartos.</translation>
    </message>
    <message>
        <source>Brick house on a crawl space</source>
        <translation>Casa de ladrillo con espacio bajo el piso</translation>
    </message>
    <message>
        <source>Weeps and vents stay open; what is closed is the floor above.</source>
        <translation>Los lloraderos y las rejillas quedan abiertos; lo que se cierra es el piso de arriba.</translation>
    </message>
    <message>
        <source>Middle house of a row</source>
        <translation>Casa en medio de una hilera</translation>
    </message>
    <message>
        <source>Neighbors on both sides: party walls and a shared attic.</source>
        <translation>Vecinos a los dos lados: muros medianeros y un ático compartido.</translation>
    </message>
    <message>
        <source>Wall corner to teach on</source>
        <translation>Esquina de muro para enseñar</translation>
    </message>
    <message>
        <source>One corner of a house, with every gap large enough to see.</source>
        <translation>Una esquina de una casa, con cada hueco tan grande que se ve.</translation>
    </message>
    <message>
        <source>Building of 24 dwellings</source>
        <translation>Edificio de 24 viviendas</translation>
    </message>
    <message>
        <source>Kitchens, baths and corridors over three floors.</source>
        <translation>Cocinas, baños y pasillos en tres pisos.</translation>
    </message>
    <message>
        <source>A job to look around in.</source>
        <translation>Un trabajo para curiosear.</translation>
    </message>
    <message>
        <source>Open this example</source>
        <translation>Abrir este ejemplo</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::FactsCard</name>
    <message>
        <source>Change in the survey</source>
        <translation>Cambiar en la inspección</translation>
    </message>
    <message>
        <source>Add a gap here</source>
        <translation>Agregar un hueco aquí</translation>
    </message>
    <message>
        <source>size</source>
        <translation>tamaño</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>alike</source>
        <translation>iguales</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>known</source>
        <translation>se sabe</translation>
    </message>
    <message>
        <source>in the hand</source>
        <translation>en la mano</translation>
    </message>
    <message>
        <source>made of</source>
        <translation>hecho de</translation>
    </message>
    <message>
        <source>belongs to</source>
        <translation>parte de</translation>
    </message>
    <message>
        <source>the ground</source>
        <translation>el suelo</translation>
    </message>
    <message>
        <source>the yard</source>
        <translation>el patio</translation>
    </message>
    <message>
        <source>the foundation</source>
        <translation>el cimiento</translation>
    </message>
    <message>
        <source>the framing</source>
        <translation>la estructura</translation>
    </message>
    <message>
        <source>the outside walls</source>
        <translation>los muros exteriores</translation>
    </message>
    <message>
        <source>the roof</source>
        <translation>el techo</translation>
    </message>
    <message>
        <source>the eaves</source>
        <translation>los aleros</translation>
    </message>
    <message>
        <source>doors and windows</source>
        <translation>puertas y ventanas</translation>
    </message>
    <message>
        <source>the inside walls</source>
        <translation>los muros interiores</translation>
    </message>
    <message>
        <source>pipes and fixtures</source>
        <translation>tubos y muebles</translation>
    </message>
    <message>
        <source>The photo %1 cannot be shown.</source>
        <translation>La foto %1 no se puede mostrar.</translation>
    </message>
    <message>
        <source>Photo of this gap</source>
        <translation>Foto de este hueco</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>ticked, as if closed</source>
        <translation>marcado, como si estuviera cerrado</translation>
    </message>
    <message>
        <source>Add a feature here</source>
        <translation>Agregar un elemento aquí</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::FeatureForm</name>
    <message>
        <source>Nothing can be added there. Click a wall, a ceiling, a floor, the roof, an eave, a door or a window.</source>
        <translation>Ahí no se puede agregar nada. Haga clic en un muro, en el techo o el piso de un cuarto, en el techo de la casa, en un alero, una puerta o una ventana.</translation>
    </message>
    <message>
        <source>&amp;Move...</source>
        <translation>&amp;Mover...</translation>
    </message>
    <message>
        <source>Sh&amp;ow...</source>
        <translation>Mostrar en &amp;imagen...</translation>
    </message>
    <message>
        <source>Click the place on the house in the picture: on a wall, a ceiling, a floor, the roof, an eave, a door or a window.</source>
        <translation>Haga clic en el lugar de la casa en la imagen: en un muro, en el techo o el piso de un cuarto, en el techo de la casa, en un alero, una puerta o una ventana.</translation>
    </message>
    <message>
        <source>Show the place on the house in the picture.</source>
        <translation>Muestre en la imagen el lugar de la casa.</translation>
    </message>
    <message>
        <source>Give it a name by which everybody finds it.</source>
        <translation>Dele un nombre con el que todos lo encuentren.</translation>
    </message>
    <message>
        <source>Another job is being opened.</source>
        <translation>Se está abriendo otro trabajo.</translation>
    </message>
    <message>
        <source>Add to the house</source>
        <translation>Agregar a la casa</translation>
    </message>
    <message>
        <source>What &amp;is there?</source>
        <translation>¿&amp;Qué hay ahí?</translation>
    </message>
    <message>
        <source>Find it by a word, such as pipe</source>
        <translation>Búsquelo por una palabra, como tubo</translation>
    </message>
    <message>
        <source>Find a type by a word</source>
        <translation>Buscar un tipo por una palabra</translation>
    </message>
    <message>
        <source>What can stand there</source>
        <translation>Lo que puede haber ahí</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Its gaps</source>
        <translation>Sus huecos</translation>
    </message>
    <message>
        <source>These are the usual widths, assumed until somebody measures. One that you change counts as measured.</source>
        <translation>Son los anchos de costumbre, supuestos hasta que alguien mida. El que usted cambie cuenta como medido.</translation>
    </message>
    <message>
        <source>Then click in the picture where it is.</source>
        <translation>Luego haga clic en la imagen donde está.</translation>
    </message>
    <message>
        <source>&amp;Add to the house</source>
        <translation>A&amp;gregar a la casa</translation>
    </message>
    <message>
        <source>It stands in the file of the house from then on. It can be undone.</source>
        <translation>Desde entonces queda en el archivo de la casa. Se puede deshacer.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Up from the yard</source>
        <translation>Altura desde el patio</translation>
    </message>
    <message>
        <source>Up from the floor</source>
        <translation>Altura desde el piso</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::FirstHints</name>
    <message>
        <source>&amp;No more hints</source>
        <translation>&amp;No más consejos</translation>
    </message>
    <message>
        <source>&amp;Got it</source>
        <translation>&amp;Entendido</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>hints</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Turn the house</source>
        <translation>Gire la casa</translation>
    </message>
    <message>
        <source>Drag in the picture to turn it, turn the wheel to come closer. The Home key shows the whole house again.</source>
        <translation>Arrastre en la imagen para girarla, mueva la rueda para acercarse. La tecla Inicio muestra otra vez la casa entera.</translation>
    </message>
    <message>
        <source>Choose a way in</source>
        <translation>Elija un camino de entrada</translation>
    </message>
    <message>
        <source>Click a row of the list, or go up and down with the arrow keys: the picture shows that way, gap by gap.</source>
        <translation>Haga clic en una fila de la lista, o suba y baje con las flechas: la imagen muestra ese camino, hueco por hueco.</translation>
    </message>
    <message>
        <source>Try a closing</source>
        <translation>Pruebe un cierre</translation>
    </message>
    <message>
        <source>Tick a gap under Closings: the ways through it go, and you see what is still open and what it costs.</source>
        <translation>Marque un hueco en Cierres: desaparecen los caminos que pasan por él, y se ve lo que sigue abierto y cuánto cuesta.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::FitSketch</name>
    <message>
        <source>The gap and the animals, to the same scale</source>
        <translation>El hueco y los animales, a la misma escala</translation>
    </message>
    <message>
        <source>The gap is closed.</source>
        <translation>El hueco está cerrado.</translation>
    </message>
    <message>
        <source>The gap: %1, clear width %2.</source>
        <translation>El hueco: %1, ancho %2.</translation>
    </message>
    <message>
        <source>%1, cross-section %2 by %3: fits.</source>
        <translation>%1, corte del cuerpo de %2 por %3: pasa.</translation>
    </message>
    <message>
        <source>%1, cross-section %2 by %3: perhaps fits, if the gap is wider by its plus-minus.</source>
        <translation>%1, corte del cuerpo de %2 por %3: quizá pasa, si el hueco es más ancho por su más o menos.</translation>
    </message>
    <message>
        <source>%1, cross-section %2 by %3: kept out.</source>
        <translation>%1, corte del cuerpo de %2 por %3: no pasa.</translation>
    </message>
    <message>
        <source>This job names no animals.</source>
        <translation>Este trabajo no nombra animales.</translation>
    </message>
    <message>
        <source>The dashed outline in the gap is that of: %1.</source>
        <translation>El contorno punteado en el hueco es el de: %1.</translation>
    </message>
    <message>
        <source>All is drawn to one scale; the bar is %1 long.</source>
        <translation>Todo está dibujado a una escala; la barra mide %1.</translation>
    </message>
    <message>
        <source>The gap is too large to be drawn whole beside them.</source>
        <translation>El hueco es demasiado grande para dibujarlo entero al lado de ellos.</translation>
    </message>
    <message>
        <source>%1 is too large to be drawn whole beside it.</source>
        <translation>%1 no cabe entero en el dibujo al lado del hueco.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapFields</name>
    <message>
        <source>Another space...</source>
        <translation>Otro espacio...</translation>
    </message>
    <message>
        <source>&amp;Move...</source>
        <translation>&amp;Mover...</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Largo</translation>
    </message>
    <message>
        <source>Pip&amp;e</source>
        <translation>Tu&amp;bo</translation>
    </message>
    <message>
        <source>How long the opening is, such as 9 m or 12 ft 6 in.</source>
        <translation>Qué tan larga es la abertura, como 9 m o 12 ft 6 in.</translation>
    </message>
    <message>
        <source>The outer diameter of the pipe, such as 22 mm.</source>
        <translation>El diámetro exterior del tubo, como 22 mm.</translation>
    </message>
    <message>
        <source>The area of the screen, such as 100 cm2; it may be left out.</source>
        <translation>El área de la malla, como 100 cm2; se puede omitir.</translation>
    </message>
    <message>
        <source>D&amp;iameter</source>
        <translation>D&amp;iámetro</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>Anch&amp;o</translation>
    </message>
    <message>
        <source>measured at the house</source>
        <translation>medido en la casa</translation>
    </message>
    <message>
        <source>taken from drawings or a model</source>
        <translation>tomado de planos o de un modelo</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>slot: a long opening</source>
        <translation>rendija: una abertura larga</translation>
    </message>
    <message>
        <source>hole: a round opening</source>
        <translation>agujero: una abertura redonda</translation>
    </message>
    <message>
        <source>ring: around a pipe</source>
        <translation>anillo: alrededor de un tubo</translation>
    </message>
    <message>
        <source>mesh: a screened opening</source>
        <translation>malla: una abertura con malla</translation>
    </message>
    <message>
        <source>A new gap</source>
        <translation>Un hueco nuevo</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Give or ta&amp;ke</source>
        <translation>Más o m&amp;enos</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forma</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>Has&amp;ta</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>Not&amp;a</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>such as hose bibb, north wall</source>
        <translation>como llave de manguera</translation>
    </message>
    <message>
        <source>how far off it may be</source>
        <translation>cuánto puede fallar</translation>
    </message>
    <message>
        <source>for whoever works there</source>
        <translation>para quien trabaje ahí</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation>Más o menos</translation>
    </message>
    <message>
        <source>How the width is known</source>
        <translation>Cómo se conoce el ancho</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>From which space</source>
        <translation>Desde qué espacio</translation>
    </message>
    <message>
        <source>To which space</source>
        <translation>Hasta qué espacio</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>The clear width, in any unit. The widest place of it counts.</source>
        <translation>El ancho libre, en cualquier unidad. Cuenta su lugar más ancho.</translation>
    </message>
    <message>
        <source>Then click in the picture where the gap is.</source>
        <translation>Luego haga clic en la imagen donde está el hueco.</translation>
    </message>
    <message>
        <source>The gap is taken out of the list of what was closed.</source>
        <translation>El hueco sale de la lista de lo que se cerró.</translation>
    </message>
    <message>
        <source>The gap was closed for good; ways in no longer lead through it.</source>
        <translation>El hueco se cerró de verdad; ya no pasan caminos por él.</translation>
    </message>
    <message>
        <source>Takes the gap out of the survey. It can be undone.</source>
        <translation>Quita el hueco de la inspección. Se puede deshacer.</translation>
    </message>
    <message>
        <source>&amp;Add this gap</source>
        <translation>Agregar este h&amp;ueco</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>This gap is %1.</source>
        <comment>closed, on a day</comment>
        <translation>Este hueco está %1.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>sides of a gap, its shape</comment>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>It is part of the described house, so that it cannot be removed here, only marked as closed.</source>
        <translation>Es parte de la casa descrita, así que aquí no se puede quitar, solo marcar como cerrado.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>three sentences</comment>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>%1, %2, %3 m</source>
        <comment>x, y and height</comment>
        <translation>%1, %2, %3 m</translation>
    </message>
    <message>
        <source>Scre&amp;en</source>
        <translation>Ma&amp;lla</translation>
    </message>
    <message>
        <source>9 m or 12 ft 6 in</source>
        <translation>9 m o 12 ft 6 in</translation>
    </message>
    <message>
        <source>its diameter, such as 22 mm</source>
        <translation>su diámetro, como 22 mm</translation>
    </message>
    <message>
        <source>its area, such as 100 cm2</source>
        <translation>su área, como 100 cm2</translation>
    </message>
    <message>
        <source>Open&amp;ing</source>
        <translation>A&amp;bertura</translation>
    </message>
    <message>
        <source>Known &amp;by</source>
        <translation>Se sabe &amp;por</translation>
    </message>
    <message>
        <source>F&amp;rom</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>1/16 in or 1.6 mm</source>
        <translation>1/16 in o 1.6 mm</translation>
    </message>
    <message>
        <source>M&amp;ark as open</source>
        <translation>Marcar &amp;como abierto</translation>
    </message>
    <message>
        <source>M&amp;ark as closed</source>
        <translation>Marcar &amp;como cerrado</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>S&amp;how...</source>
        <translation>Mostrar en &amp;imagen...</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapForm</name>
    <message>
        <source>gap in %1</source>
        <translation>hueco en %1</translation>
    </message>
    <message>
        <source>Give the gap a name by which everybody finds it.</source>
        <translation>Dé al hueco un nombre con el que todos lo encuentren.</translation>
    </message>
    <message>
        <source>Choose the spaces on both sides.</source>
        <translation>Elija los espacios de los dos lados.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapList</name>
    <message>
        <source>%1, %2</source>
        <comment>how many gaps, how many of them are not measured</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s)</source>
        <translation>
            <numerusform>%n hueco</numerusform>
            <numerusform>%n huecos</numerusform>
        </translation>
    </message>
    <message>
        <source>all measured</source>
        <translation>todos medidos</translation>
    </message>
    <message numerus="yes">
        <source>%n not measured</source>
        <translation>
            <numerusform>%n sin medir</numerusform>
            <numerusform>%n sin medir</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>name, width, how known</comment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Huecos</translation>
    </message>
    <message>
        <source>Find a gap</source>
        <translation>Buscar un hueco</translation>
    </message>
    <message>
        <source>Find a gap by words of its name or its rooms</source>
        <translation>Buscar un hueco por palabras de su nombre o de sus cuartos</translation>
    </message>
    <message>
        <source>Order of the list</source>
        <translation>Orden de la lista</translation>
    </message>
    <message>
        <source>Widest first</source>
        <translation>Primero los más anchos</translation>
    </message>
    <message>
        <source>By place</source>
        <translation>Por lugar</translation>
    </message>
    <message>
        <source>Gaps of the survey</source>
        <translation>Huecos de la inspección</translation>
    </message>
    <message>
        <source>Add a &amp;gap...</source>
        <translation>Agregar un &amp;hueco...</translation>
    </message>
    <message>
        <source>Or click with the right button in the picture where the gap is.</source>
        <translation>O haga clic con el botón derecho en la imagen donde está el hueco.</translation>
    </message>
    <message>
        <source>Unmeas&amp;ured only</source>
        <translation>Solo &amp;sin medir</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapListRow</name>
    <message>
        <source>%1 · %2</source>
        <comment>how known, sides of a gap</comment>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::HelpPages</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Search all pages</source>
        <translation>Buscar en todas las páginas</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Next place with these words (Enter)</source>
        <translation>Siguiente lugar con estas palabras (Entrar)</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Back to the page before</source>
        <translation>Volver a la página anterior</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>These pages are in English.</source>
        <translation>Estas páginas están en inglés.</translation>
    </message>
    <message>
        <source>No page has these words.</source>
        <translation>Ninguna página tiene estas palabras.</translation>
    </message>
    <message numerus="yes">
        <source>On %n page(s)</source>
        <translation>
            <numerusform>En %n página</numerusform>
            <numerusform>En %n páginas</numerusform>
        </translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::JobDocument</name>
    <message>
        <source>Looking for ways in</source>
        <translation>Buscando caminos de entrada</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::KeyPanel</name>
    <message>
        <source>chosen way in</source>
        <translation>camino elegido</translation>
    </message>
    <message>
        <source>position not given</source>
        <translation>posición no indicada</translation>
    </message>
    <message>
        <source>its smallest gap</source>
        <translation>su hueco más estrecho</translation>
    </message>
    <message>
        <source>other ways in</source>
        <translation>otros caminos</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>rendija</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>agujero</translation>
    </message>
    <message>
        <source>ring around a pipe</source>
        <translation>holgura alrededor de un tubo</translation>
    </message>
    <message>
        <source>mesh</source>
        <translation>malla</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>room, amid its gaps</source>
        <translation>cuarto, entre sus huecos</translation>
    </message>
    <message>
        <source>the survey&apos;s x and y</source>
        <translation>x e y de la inspección</translation>
    </message>
    <message>
        <source>box around the surveyed gaps, not the house</source>
        <translation>caja alrededor de los huecos, no la casa</translation>
    </message>
    <message>
        <source>one square: %1</source>
        <translation>un cuadro: %1</translation>
    </message>
    <message>
        <source>What the signs mean</source>
        <translation>Qué significan los signos</translation>
    </message>
    <message>
        <source>abc</source>
        <translation>abc</translation>
    </message>
    <message>
        <source>where something hides it</source>
        <translation>donde algo lo tapa</translation>
    </message>
    <message>
        <source>can be closed, by its number in the list</source>
        <translation>se puede cerrar, con su número en la lista</translation>
    </message>
    <message>
        <source>ticked, as if closed</source>
        <translation>marcado, como si estuviera cerrado</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::MainWindow</name>
    <message>
        <source>Seamward</source>
        <translation>Seamward</translation>
    </message>
    <message>
        <source>Drag to turn, right-drag to move, wheel to come closer, Home key: whole house</source>
        <translation>Arrastrar: girar; con el botón derecho: mover; rueda: acercar; tecla Inicio: casa entera</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Open a job...</source>
        <translation>A&amp;brir un trabajo...</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Abrir un trabajo</translation>
    </message>
    <message>
        <source>Job files (*.yaml *.yml *.json);;All files (*)</source>
        <translation>Archivos de trabajo (*.yaml *.yml *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>Click the place on the house</source>
        <translation>Haga clic en el lugar de la casa</translation>
    </message>
    <message>
        <source>Save the ride as a film</source>
        <translation>Guardar el recorrido como película</translation>
    </message>
    <message>
        <source>Films (*.ogv)</source>
        <translation>Películas (*.ogv)</translation>
    </message>
    <message>
        <source>Another window has opened that work.</source>
        <translation>Otra ventana ya abrió ese trabajo.</translation>
    </message>
    <message>
        <source>%1, changed %2</source>
        <translation>%1, cambiado %2</translation>
    </message>
    <message>
        <source>ticks of closings</source>
        <translation>marcas de cierres</translation>
    </message>
    <message>
        <source>%1[*] - Seamward</source>
        <translation>%1[*] - Seamward</translation>
    </message>
    <message>
        <source>The survey of %1 has changes that are not saved.</source>
        <translation>La inspección de %1 tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1 no se puede escribir: %2</translation>
    </message>
    <message>
        <source>This job has no house.</source>
        <translation>Este trabajo no tiene casa.</translation>
    </message>
    <message>
        <source>No way in is chosen whose line through the house is known.</source>
        <translation>No hay elegido un camino cuya línea por la casa se conozca.</translation>
    </message>
    <message>
        <source>Saving the ride</source>
        <translation>Guardando el recorrido</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>&amp;New house...</source>
        <translation>Casa &amp;nueva...</translation>
    </message>
    <message>
        <source>Open a &amp;builder&apos;s model...</source>
        <translation>Abrir un &amp;modelo del constructor...</translation>
    </message>
    <message>
        <source>&amp;Save the survey</source>
        <translation>&amp;Guardar la inspección</translation>
    </message>
    <message>
        <source>Save the survey &amp;as...</source>
        <translation>Guardar la inspección &amp;como...</translation>
    </message>
    <message>
        <source>Save the &amp;picture...</source>
        <translation>Guardar la &amp;imagen...</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Guardar la imagen</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>Save the &amp;house for 3D programs...</source>
        <translation>Guardar l&amp;a casa para programas 3D...</translation>
    </message>
    <message>
        <source>Save the house</source>
        <translation>Guardar la casa</translation>
    </message>
    <message>
        <source>glTF files (*.glb)</source>
        <translation>Archivos glTF (*.glb)</translation>
    </message>
    <message>
        <source>Save the &amp;ride as a film...</source>
        <translation>Guardar el &amp;recorrido como película...</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Remove the chosen gap</source>
        <translation>&amp;Quitar el hueco elegido</translation>
    </message>
    <message>
        <source>&amp;House</source>
        <translation>&amp;Casa</translation>
    </message>
    <message>
        <source>&amp;Ways in</source>
        <translation>Ca&amp;minos</translation>
    </message>
    <message>
        <source>&amp;Closings</source>
        <translation>C&amp;ierres</translation>
    </message>
    <message>
        <source>&amp;Survey</source>
        <translation>I&amp;nspección</translation>
    </message>
    <message>
        <source>W&amp;hole house</source>
        <translation>Casa en&amp;tera</translation>
    </message>
    <message>
        <source>&amp;Turn to where the way in is seen</source>
        <translation>&amp;Girar a donde se ve el camino</translation>
    </message>
    <message>
        <source>Ride &amp;along the way in</source>
        <translation>&amp;Recorrer el camino</translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation>A&amp;justes</translation>
    </message>
    <message>
        <source>&amp;Larger letters</source>
        <translation>Letra más &amp;grande</translation>
    </message>
    <message>
        <source>S&amp;maller letters</source>
        <translation>Letra más &amp;chica</translation>
    </message>
    <message>
        <source>&amp;All settings...</source>
        <translation>&amp;Todos los ajustes...</translation>
    </message>
    <message>
        <source>Hel&amp;p</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Pages on everything...</source>
        <translation>&amp;Páginas sobre todo...</translation>
    </message>
    <message>
        <source>&amp;What this cannot do...</source>
        <translation>Lo que esto &amp;no puede hacer...</translation>
    </message>
    <message>
        <source>Ways in</source>
        <translation>Caminos</translation>
    </message>
    <message>
        <source>Closings</source>
        <translation>Cierres</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Inspección</translation>
    </message>
    <message>
        <source>Key: Ctrl+%1</source>
        <translation>Tecla: Ctrl+%1</translation>
    </message>
    <message>
        <source>Seamward: pages on everything</source>
        <translation>Seamward: páginas sobre todo</translation>
    </message>
    <message>
        <source>%1 was changed by another program since it was opened here. Save over those changes?</source>
        <translation>Otro programa cambió %1 desde que se abrió aquí. ¿Guardar encima de esos cambios?</translation>
    </message>
    <message>
        <source>Save the survey as</source>
        <translation>Guardar la inspección como</translation>
    </message>
    <message>
        <source>Job files (*.yaml *.json)</source>
        <translation>Archivos de trabajo (*.yaml *.json)</translation>
    </message>
    <message>
        <source>Click two points of the house. Press Escape to end measuring.</source>
        <translation>Haga clic en dos puntos de la casa. Oprima Escape para dejar de medir.</translation>
    </message>
    <message>
        <source>&amp;First page</source>
        <translation>&amp;Primera página</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ModelForm</name>
    <message>
        <source>Nothing was written. %1</source>
        <translation>No se escribió nada. %1</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Cancelado. No se escribió nada.</translation>
    </message>
    <message>
        <source>Open a builder&apos;s model</source>
        <translation>Abrir un modelo del constructor</translation>
    </message>
    <message>
        <source>3D files (%1);;All files (*)</source>
        <translation>Archivos 3D (%1);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Job file to write</source>
        <translation>Archivo de trabajo por escribir</translation>
    </message>
    <message>
        <source>Job files (*.yaml)</source>
        <translation>Archivos de trabajo (*.yaml)</translation>
    </message>
    <message>
        <source>Line %1 is no room: write its name and a point in it, such as kitchen, 2.5 m, 10 ft, 1.2 m.</source>
        <translation>La línea %1 no es un cuarto: escriba su nombre y un punto en él, como cocina, 2.5 m, 10 ft, 1.2 m.</translation>
    </message>
    <message>
        <source>Line %1 names a room that stands above already.</source>
        <translation>La línea %1 nombra un cuarto que ya está arriba.</translation>
    </message>
    <message>
        <source>Choose the 3D file of the house.</source>
        <translation>Elija el archivo 3D de la casa.</translation>
    </message>
    <message>
        <source>Files of this kind cannot be read; those that end in %1 can.</source>
        <translation>No se pueden leer archivos de este tipo; sí los que terminan en %1.</translation>
    </message>
    <message>
        <source>Beginning</source>
        <translation>Empezando</translation>
    </message>
    <message>
        <source>Calling it off</source>
        <translation>Cancelando</translation>
    </message>
    <message numerus="yes">
        <source>%n space(s)</source>
        <translation>
            <numerusform>%n espacio</numerusform>
            <numerusform>%n espacios</numerusform>
        </translation>
    </message>
    <message>
        <source>The job file is %1.</source>
        <translation>El archivo del trabajo es %1.</translation>
    </message>
    <message>
        <source>All parts that the file lists came through.</source>
        <translation>Llegaron todas las partes que el archivo enumera.</translation>
    </message>
    <message>
        <source>Lost on the way</source>
        <translation>Perdido en el camino</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Bueno saberlo</translation>
    </message>
    <message>
        <source>Finds the rooms, the cavities and the gaps between them in a 3D file, and writes a job file of them.</source>
        <translation>Busca los cuartos, las cavidades y los huecos entre ellos en un archivo 3D, y escribe con ellos un archivo de trabajo.</translation>
    </message>
    <message>
        <source>&amp;3D file of the house</source>
        <translation>Archivo &amp;3D de la casa</translation>
    </message>
    <message>
        <source>&amp;Choose...</source>
        <translation>&amp;Elegir...</translation>
    </message>
    <message>
        <source>&amp;Unit of its lengths</source>
        <translation>&amp;Unidad de sus largos</translation>
    </message>
    <message>
        <source>As the file says</source>
        <translation>La que diga el archivo</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Metros</translation>
    </message>
    <message>
        <source>Centimeters</source>
        <translation>Centímetros</translation>
    </message>
    <message>
        <source>Millimeters</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pies</translation>
    </message>
    <message>
        <source>&amp;Axis that points up</source>
        <translation>Eje que apunta &amp;arriba</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <source>z</source>
        <translation>z</translation>
    </message>
    <message>
        <source>&amp;Rooms that you know, one a line; more can be named later</source>
        <translation>&amp;Cuartos que conoce, uno por línea; después puede nombrar más</translation>
    </message>
    <message>
        <source>kitchen, 2.5 m, 3 m, 1.2 m</source>
        <translation>cocina, 2.5 m, 3 m, 1.2 m</translation>
    </message>
    <message>
        <source>&amp;Job file to write</source>
        <translation>Archivo de &amp;trabajo por escribir</translation>
    </message>
    <message>
        <source>C&amp;hoose...</source>
        <translation>E&amp;legir...</translation>
    </message>
    <message>
        <source>&amp;Find the gaps</source>
        <translation>&amp;Buscar los huecos</translation>
    </message>
    <message>
        <source>A house takes seconds, a large building minutes. You can call it off at any time.</source>
        <translation>Una casa tarda segundos, un edificio grande minutos. Puede cancelar en cualquier momento.</translation>
    </message>
    <message>
        <source>Call it &amp;off</source>
        <translation>Cance&amp;lar</translation>
    </message>
    <message>
        <source>&amp;Open the job</source>
        <translation>Abrir el traba&amp;jo</translation>
    </message>
    <message>
        <source>What came of the file</source>
        <translation>Lo que resultó del archivo</translation>
    </message>
    <message numerus="yes">
        <source>Found: %n gap(s) between %1.</source>
        <comment>%1: so many spaces</comment>
        <translation>
            <numerusform>Encontrado: %n hueco entre %1.</numerusform>
            <numerusform>Encontrados: %n huecos entre %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>Ce&amp;rrar</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::NewHouseForm</name>
    <message>
        <source>Folder for the new house</source>
        <translation>Carpeta para la casa nueva</translation>
    </message>
    <message>
        <source>Type a length with its unit, such as 46 ft, 12 ft 6 in or 14 m.</source>
        <translation>Escriba un largo con su unidad, como 46 ft, 12 ft 6 in o 14 m.</translation>
    </message>
    <message>
        <source>Line %1 is no corner: write two lengths with their units, such as 12 ft, 30 ft 6 in.</source>
        <translation>La línea %1 no es una esquina: escriba dos largos con sus unidades, como 12 ft, 30 ft 6 in.</translation>
    </message>
    <message>
        <source>Writes %1 and %2.</source>
        <translation>Escribe %1 y %2.</translation>
    </message>
    <message numerus="yes">
        <source>Not all answers can be used yet; see beside them.</source>
        <translation>
            <numerusform>Todavía no sirven todas las respuestas; vea al lado de ellas.</numerusform>
            <numerusform>Todavía no sirven todas las respuestas; vea al lado de ellas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was written: %1</source>
        <translation>No se escribió nada: %1</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se escribió nada.</translation>
    </message>
    <message>
        <source>New house</source>
        <translation>Casa nueva</translation>
    </message>
    <message>
        <source>&amp;Name of the job</source>
        <translation>&amp;Nombre del trabajo</translation>
    </message>
    <message>
        <source>customer, or street and number</source>
        <translation>cliente, o calle y número</translation>
    </message>
    <message>
        <source>A&amp;ddress, if you like</source>
        <translation>&amp;Dirección, si quiere</translation>
    </message>
    <message>
        <source>&amp;Folder for its two files</source>
        <translation>Car&amp;peta para sus dos archivos</translation>
    </message>
    <message>
        <source>C&amp;hoose...</source>
        <translation>E&amp;legir...</translation>
    </message>
    <message>
        <source>Outline, from above</source>
        <translation>Contorno, desde arriba</translation>
    </message>
    <message>
        <source>How it is built</source>
        <translation>Cómo está construida</translation>
    </message>
    <message>
        <source>Animals to keep out</source>
        <translation>Animales que dejar fuera</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rectángulo</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Esquinas</translation>
    </message>
    <message>
        <source>Outline: %1</source>
        <translation>Contorno: %1</translation>
    </message>
    <message>
        <source>&amp;Along the street</source>
        <translation>&amp;A lo largo de la calle</translation>
    </message>
    <message>
        <source>Front to &amp;back</source>
        <translation>De frente a &amp;fondo</translation>
    </message>
    <message>
        <source>&amp;Wing along the street</source>
        <translation>A&amp;la a lo largo de la calle</translation>
    </message>
    <message>
        <source>Wing reaches back b&amp;y</source>
        <translation>El ala llega al fondo p&amp;or</translation>
    </message>
    <message>
        <source>&amp;Corners in order, one a line: to the right, and back from the street</source>
        <translation>Esquinas en orden, una por línea: a la &amp;derecha, y desde la calle hacia el fondo</translation>
    </message>
    <message>
        <source>0 ft, 0 ft
40 ft, 0 ft
40 ft, 28 ft 6 in
0 ft, 28 ft 6 in</source>
        <translation>0 ft, 0 ft
40 ft, 0 ft
40 ft, 28 ft 6 in
0 ft, 28 ft 6 in</translation>
    </message>
    <message>
        <source>&amp;Stories</source>
        <translation>Pi&amp;sos</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Uno</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Dos</translation>
    </message>
    <message>
        <source>&amp;Garage</source>
        <translation>&amp;Garaje</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>For one car</source>
        <translation>Para un carro</translation>
    </message>
    <message>
        <source>For two cars</source>
        <translation>Para dos carros</translation>
    </message>
    <message>
        <source>&amp;Outside of the walls</source>
        <translation>E&amp;xterior de los muros</translation>
    </message>
    <message>
        <source>Stucco</source>
        <translation>Estuco</translation>
    </message>
    <message>
        <source>Brick</source>
        <translation>Ladrillo</translation>
    </message>
    <message>
        <source>Siding</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>A slab</source>
        <translation>Una losa</translation>
    </message>
    <message>
        <source>A crawl space</source>
        <translation>Un espacio bajo el piso</translation>
    </message>
    <message>
        <source>A basement</source>
        <translation>Un sótano</translation>
    </message>
    <message>
        <source>&amp;Roof</source>
        <translation>&amp;Techo</translation>
    </message>
    <message>
        <source>Hip: slopes on all sides</source>
        <translation>A cuatro aguas</translation>
    </message>
    <message>
        <source>Gables</source>
        <translation>Con hastiales</translation>
    </message>
    <message>
        <source>Shed: one slope</source>
        <translation>De un agua</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Doors, windows, pipes and vents come at their usual places with usual widths, marked as assumed. Check each on site.</source>
        <translation>Puertas, ventanas, tubos y rejillas quedan en sus lugares de costumbre con anchos de costumbre, marcados como supuestos. Revise cada uno en el sitio.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Make the house</source>
        <translation>&amp;Hacer la casa</translation>
    </message>
    <message>
        <source>It s&amp;tands on</source>
        <translation>Está so&amp;bre</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::OutlineSketch</name>
    <message>
        <source>Sketch of the house from above</source>
        <translation>Croquis de la casa desde arriba</translation>
    </message>
    <message numerus="yes">
        <source>An outline of %n wall(s).</source>
        <translation>
            <numerusform>Un contorno de %n muro.</numerusform>
            <numerusform>Un contorno de %n muros.</numerusform>
        </translation>
    </message>
    <message>
        <source>The outline is not complete yet.</source>
        <translation>El contorno todavía no está completo.</translation>
    </message>
    <message>
        <source>street</source>
        <translation>calle</translation>
    </message>
    <message>
        <source>The outline shows here as soon as it has three corners.</source>
        <translation>El contorno aparece aquí en cuanto tenga tres esquinas.</translation>
    </message>
    <message>
        <source>garage</source>
        <translation>garaje</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PhotoField</name>
    <message>
        <source>%1 is not there, or no picture.</source>
        <translation>%1 no está, o no es una imagen.</translation>
    </message>
    <message>
        <source>A photo of this gap</source>
        <translation>Una foto de este hueco</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif);;All files (*)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png *.webp *.bmp *.gif);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Choose a &amp;photo...</source>
        <translation>Elegir una &amp;foto...</translation>
    </message>
    <message>
        <source>The picture stays where it is; the job file notes its place from its own folder.</source>
        <translation>La imagen se queda donde está; el archivo del trabajo anota su lugar desde su propia carpeta.</translation>
    </message>
    <message>
        <source>The picture itself is not deleted.</source>
        <translation>La imagen misma no se borra.</translation>
    </message>
    <message>
        <source>Photo of the gap</source>
        <translation>Foto del hueco</translation>
    </message>
    <message>
        <source>&amp;Photo...</source>
        <translation>Fot&amp;o...</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PictureCanvas</name>
    <message>
        <source>Picture of the house</source>
        <translation>Imagen de la casa</translation>
    </message>
    <message>
        <source>and now the other end</source>
        <translation>y ahora el otro extremo</translation>
    </message>
    <message>
        <source>Gap %1 of %2, the smallest: %3, %4</source>
        <translation>Hueco %1 de %2, el más estrecho: %3, %4</translation>
    </message>
    <message>
        <source>Gap %1 of %2: %3, %4</source>
        <translation>Hueco %1 de %2: %3, %4</translation>
    </message>
    <message>
        <source>In: %1</source>
        <translation>En: %1</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PicturePane</name>
    <message>
        <source>No gap of this job has a position, so there is nothing to draw.

The ways in are in the list. To see them here, give gaps a position in the job file:
at: [4.5 m, 9 m, 0.05 m]</source>
        <translation>Ningún hueco de este trabajo tiene posición, así que no hay nada que dibujar.

Los caminos de entrada están en la lista. Para verlos aquí, dé una posición a los huecos en el archivo del trabajo:
at: [4.5 m, 9 m, 0.05 m]</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PreferencesDialog</name>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>&amp;Widths</source>
        <translation>&amp;Anchos</translation>
    </message>
    <message>
        <source>Size of the l&amp;etters</source>
        <translation>&amp;Tamaño de letra</translation>
    </message>
    <message>
        <source>&amp;Strong contrast: black on white</source>
        <translation>Contraste &amp;fuerte: negro sobre blanco</translation>
    </message>
    <message>
        <source>For bright sun and for eyes that need it</source>
        <translation>Para pleno sol y para ojos que lo necesitan</translation>
    </message>
    <message>
        <source>Show the &amp;hints again</source>
        <translation>&amp;Mostrar otra vez los consejos</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>As on this computer</source>
        <translation>Como en esta computadora</translation>
    </message>
    <message>
        <source>Inches, and millimeters beside them</source>
        <translation>Pulgadas, y al lado milímetros</translation>
    </message>
    <message>
        <source>Millimeters only</source>
        <translation>Solo milímetros</translation>
    </message>
    <message>
        <source>%1 percent</source>
        <translation>%1 por ciento</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PriceCurve</name>
    <message>
        <source>What each price keeps out</source>
        <translation>Lo que cada precio deja fuera</translation>
    </message>
    <message>
        <source>Drag along the price, or use the arrow keys: what gives the most for that price is ticked.</source>
        <translation>Arrastre por el precio, o use las flechas: se marca lo que más rinde por ese precio.</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::PricePart</name>
    <message>
        <source>Widest way left in, at each price</source>
        <translation>Camino más ancho que queda, a cada precio</translation>
    </message>
    <message>
        <source>Tick &amp;all</source>
        <translation>&amp;Marcar todo</translation>
    </message>
    <message>
        <source>Tick every step of the plan</source>
        <translation>Marcar cada paso del plan</translation>
    </message>
    <message>
        <source>&amp;Untick all</source>
        <translation>&amp;Desmarcar todo</translation>
    </message>
    <message>
        <source>The house as it stands</source>
        <translation>La casa tal como está</translation>
    </message>
    <message>
        <source>Budget, as $400</source>
        <translation>Tope: $400</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Type an amount and press Enter: what shuts out the most for it is ticked.</source>
        <translation>Escriba una cantidad y oprima Entrar: se marca lo que más deja fuera por ese dinero.</translation>
    </message>
    <message>
        <source>Which animals the plan has to shut out</source>
        <translation>Qué animales debe dejar fuera el plan</translation>
    </message>
    <message>
        <source>Pla&amp;n against: choose animals</source>
        <translation>&amp;Planear contra: elija animales</translation>
    </message>
    <message>
        <source>Pla&amp;n against %1</source>
        <translation>&amp;Planear contra %1</translation>
    </message>
    <message>
        <source>Pla&amp;n against %1 animals</source>
        <translation>&amp;Planear contra %1 animales</translation>
    </message>
    <message>
        <source>Plan a&amp;gainst the others</source>
        <translation>Planear contra los &amp;otros</translation>
    </message>
    <message>
        <source>Against those that can be shut out: %1</source>
        <translation>Contra los que se pueden dejar fuera: %1</translation>
    </message>
    <message>
        <source>&amp;Others</source>
        <translation>&amp;Otros</translation>
    </message>
    <message>
        <source>%1 is no amount of money. Write it as $400 or $399.50.</source>
        <translation>%1 no es una cantidad de dinero. Escríbala como $400 o $399.50.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::RecentRow</name>
    <message>
        <source>opened %1</source>
        <translation>abierto %1</translation>
    </message>
    <message>
        <source>Gone: there is no such file now</source>
        <translation>Ya no está: ese archivo no existe</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>place, day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>job, what is known of it</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Take it off this list; the file stays</source>
        <translation>Quitarlo de esta lista; el archivo se queda</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Quitar %1 de la lista</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::RideBar</name>
    <message>
        <source>Stop here</source>
        <translation>Parar aquí</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Key: space bar</source>
        <translation>Tecla: barra espaciadora</translation>
    </message>
    <message>
        <source>Save as a film...</source>
        <translation>Guardar como película...</translation>
    </message>
    <message>
        <source>Back to the house</source>
        <translation>Volver a la casa</translation>
    </message>
    <message>
        <source>Key: Escape</source>
        <translation>Tecla: Escape</translation>
    </message>
    <message>
        <source>Where the ride is</source>
        <translation>Dónde va el recorrido</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::SizeField</name>
    <message>
        <source>Type a size with its unit, such as 1/16 in or 1.6 mm.</source>
        <translation>Escriba un tamaño con su unidad, como 1/16 in o 1.6 mm.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>what is wrong, how to mend it</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>width, in things at hand</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>%1 square inches</source>
        <translation>%1 pulgadas cuadradas</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::SpaceDialog</name>
    <message>
        <source>New space</source>
        <translation>Espacio nuevo</translation>
    </message>
    <message>
        <source>such as pantry, or chase behind the tub</source>
        <translation>como despensa, o ducto detrás de la tina</translation>
    </message>
    <message>
        <source>a room that people use</source>
        <translation>un cuarto que se usa</translation>
    </message>
    <message>
        <source>inside of a wall, an attic, a shaft</source>
        <translation>interior de un muro, un ático, un ducto</translation>
    </message>
    <message>
        <source>a garage or a porch</source>
        <translation>un garaje o un porche</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>where animals live, as in a block wall</source>
        <translation>donde viven animales, como en una barda de bloque</translation>
    </message>
    <message>
        <source>A&amp;nimals may already be there</source>
        <translation>Puede que ya haya an&amp;imales</translation>
    </message>
    <message>
        <source>Such as a dry floor drain or a neighbor&apos;s unit: ways in start there too.</source>
        <translation>Como una coladera seca o la vivienda de un vecino: ahí también empiezan caminos.</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>A&amp;gregar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;What it is</source>
        <translation>&amp;Qué es</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::StartPage</name>
    <message>
        <source>Not saved when the program ended: %1</source>
        <translation>Sin guardar al cerrarse el programa: %1</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarlo</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>Recuperar %1</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Descartarlo</translation>
    </message>
    <message>
        <source>Throw away %1</source>
        <translation>Descartar %1</translation>
    </message>
    <message>
        <source>Seamward</source>
        <translation>Seamward</translation>
    </message>
    <message>
        <source>Shows the gaps by which pests get into a house, the ways through them, and what closes them.</source>
        <translation>Muestra los huecos por donde entran las plagas a una casa, los caminos que pasan por ellos y con qué se cierran.</translation>
    </message>
    <message>
        <source>&amp;New house...</source>
        <translation>Casa &amp;nueva...</translation>
    </message>
    <message>
        <source>Describe a house by a few questions</source>
        <translation>Describir una casa con unas cuantas preguntas</translation>
    </message>
    <message>
        <source>&amp;Open a job...</source>
        <translation>A&amp;brir un trabajo...</translation>
    </message>
    <message>
        <source>Open a job file from this computer</source>
        <translation>Abrir un archivo de trabajo de esta computadora</translation>
    </message>
    <message>
        <source>Open a &amp;builder&apos;s model...</source>
        <translation>Abrir un &amp;modelo del constructor...</translation>
    </message>
    <message>
        <source>Find the gaps in a 3D file of the house</source>
        <translation>Buscar los huecos en un archivo 3D de la casa</translation>
    </message>
    <message>
        <source>Recent jobs</source>
        <translation>Trabajos recientes</translation>
    </message>
    <message>
        <source>Jobs that you open are listed here.</source>
        <translation>Aquí aparecen los trabajos que abra.</translation>
    </message>
    <message>
        <source>Examples to look around in</source>
        <translation>Ejemplos para curiosear</translation>
    </message>
    <message>
        <source>The examples are not on this computer.</source>
        <translation>Los ejemplos no están en esta computadora.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::SurveyDocument</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>This job is written in JSON. Choose a name that ends in .json.</source>
        <translation>Este trabajo está escrito en JSON. Elija un nombre que termine en .json.</translation>
    </message>
    <message>
        <source>This job is written in YAML. Choose a name that ends in .yaml.</source>
        <translation>Este trabajo está escrito en YAML. Elija un nombre que termine en .yaml.</translation>
    </message>
    <message>
        <source>This job has no described house.</source>
        <translation>Este trabajo no tiene casa descrita.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::SurveyPanel</name>
    <message>
        <source>Choose a gap here or in the picture to see it and to change it.</source>
        <translation>Elija un hueco aquí o en la imagen para verlo y cambiarlo.</translation>
    </message>
    <message>
        <source>A hose bibb, a light, a register: click where it is, and its gaps come with it.</source>
        <translation>Una llave de manguera, una lámpara, una rejilla: haga clic donde está, y sus huecos vienen con ella.</translation>
    </message>
    <message>
        <source>This job has a builder&apos;s model, not a described house, so that only single gaps can be added.</source>
        <translation>Este trabajo tiene un modelo del constructor, no una casa descrita, así que solo se pueden agregar huecos sueltos.</translation>
    </message>
    <message>
        <source>This job has no described house, so that only single gaps can be added.</source>
        <translation>Este trabajo no tiene casa descrita, así que solo se pueden agregar huecos sueltos.</translation>
    </message>
    <message>
        <source>A&amp;dd a feature...</source>
        <translation>A&amp;gregar un elemento...</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ViewTools</name>
    <message>
        <source>Roof</source>
        <translation>Techo</translation>
    </message>
    <message>
        <source>Outside walls</source>
        <translation>Muros exteriores</translation>
    </message>
    <message>
        <source>Framing</source>
        <translation>Estructura</translation>
    </message>
    <message>
        <source>Inside walls</source>
        <translation>Muros interiores</translation>
    </message>
    <message>
        <source>Pipes</source>
        <translation>Tubos</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>%1: shown. Press for faint.</source>
        <translation>%1: se ve. Oprima para tenue.</translation>
    </message>
    <message>
        <source>%1: faint. Press to hide.</source>
        <translation>%1: tenue. Oprima para ocultar.</translation>
    </message>
    <message>
        <source>%1: hidden. Press to show.</source>
        <translation>%1: oculto. Oprima para mostrar.</translation>
    </message>
    <message>
        <source>%1 Key: %2</source>
        <translation>%1 Tecla: %2</translation>
    </message>
    <message>
        <source>See inside</source>
        <translation>Ver adentro</translation>
    </message>
    <message>
        <source>Walls and roof that stand between you and the rooms fade as you go round. Key: I</source>
        <translation>Los muros y el techo que quedan entre usted y los cuartos se aclaran al dar la vuelta. Tecla: I</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>From the south. Key: S</source>
        <translation>Desde el sur. Tecla: S</translation>
    </message>
    <message>
        <source>From the east. Key: E</source>
        <translation>Desde el este. Tecla: E</translation>
    </message>
    <message>
        <source>From the north. Key: N</source>
        <translation>Desde el norte. Tecla: N</translation>
    </message>
    <message>
        <source>From the west. Key: W</source>
        <translation>Desde el oeste. Tecla: W</translation>
    </message>
    <message>
        <source>From above. Key: T</source>
        <translation>Desde arriba. Tecla: T</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>Co&amp;rte</translation>
    </message>
    <message>
        <source>no cut</source>
        <translation>sin corte</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>desde el sur</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>desde el este</translation>
    </message>
    <message>
        <source>from the north</source>
        <translation>desde el norte</translation>
    </message>
    <message>
        <source>from the west</source>
        <translation>desde el oeste</translation>
    </message>
    <message>
        <source>from above</source>
        <translation>desde arriba</translation>
    </message>
    <message>
        <source>Cut through the house</source>
        <translation>Corte por la casa</translation>
    </message>
    <message>
        <source>Takes away what lies before a plane</source>
        <translation>Quita lo que está delante de un plano</translation>
    </message>
    <message>
        <source>How far the cut goes into the house</source>
        <translation>Hasta dónde entra el corte en la casa</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Click two points of the house to measure between them. Key: M</source>
        <translation>Haga clic en dos puntos de la casa para medir entre ellos. Tecla: M</translation>
    </message>
    <message>
        <source>Ride along</source>
        <translation>Recorrer</translation>
    </message>
    <message>
        <source>Follow the chosen way as the animal does. Key: R</source>
        <translation>Siga el camino elegido como lo hace el animal. Tecla: R</translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Signos</translation>
    </message>
    <message>
        <source>Shows what the signs in the picture mean</source>
        <translation>Muestra qué significan los signos de la imagen</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::WaysPanel</name>
    <message>
        <source>Ways in</source>
        <translation>Caminos de entrada</translation>
    </message>
    <message>
        <source>The way in, gap by gap</source>
        <translation>El camino de entrada, hueco por hueco</translation>
    </message>
    <message>
        <source>&amp;Animal</source>
        <translation>A&amp;nimal</translation>
    </message>
    <message>
        <source>Animal</source>
        <translation>Animales</translation>
    </message>
    <message>
        <source>Show only the ways in that this animal gets through</source>
        <translation>Mostrar solo los caminos por los que pasa este animal</translation>
    </message>
    <message>
        <source>&amp;Room</source>
        <translation>Cuar&amp;to</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Show only the ways into this room</source>
        <translation>Mostrar solo los caminos a este cuarto</translation>
    </message>
    <message>
        <source>All animals</source>
        <translation>Todos los animales</translation>
    </message>
    <message>
        <source>All rooms</source>
        <translation>Todos los cuartos</translation>
    </message>
    <message numerus="yes">
        <source>%n remark(s) on this survey, under the steps</source>
        <translation>
            <numerusform>%n observación sobre esta inspección, debajo de los pasos</numerusform>
            <numerusform>%n observaciones sobre esta inspección, debajo de los pasos</numerusform>
        </translation>
    </message>
    <message>
        <source>To check: %1.</source>
        <translation>Por revisar: %1.</translation>
    </message>
    <message>
        <source>No way in, as far as this survey goes.</source>
        <translation>Ningún camino de entrada, hasta donde llega esta inspección.</translation>
    </message>
    <message>
        <source>No way in for %1, as far as this survey goes.</source>
        <translation>Ningún camino de entrada para %1, hasta donde llega esta inspección.</translation>
    </message>
    <message>
        <source>No way into %1, as far as this survey goes.</source>
        <translation>Ningún camino a %1, hasta donde llega esta inspección.</translation>
    </message>
    <message>
        <source>No way in for %1 into %2, as far as this survey goes.</source>
        <translation>Ningún camino para %1 a %2, hasta donde llega esta inspección.</translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in, by smallest gap</source>
        <translation>
            <numerusform>El camino de entrada más ancho, por su hueco más estrecho</numerusform>
            <numerusform>Los %n caminos de entrada más anchos, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in for %1, by smallest gap</source>
        <translation>
            <numerusform>El camino más ancho para %1, por su hueco más estrecho</numerusform>
            <numerusform>Los %n caminos más anchos para %1, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) into %1, by smallest gap</source>
        <translation>
            <numerusform>El camino más ancho a %1, por su hueco más estrecho</numerusform>
            <numerusform>Los %n caminos más anchos a %1, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The %n widest way(s) in for %1 into %2, by smallest gap</source>
        <translation>
            <numerusform>El camino más ancho para %1 a %2, por su hueco más estrecho</numerusform>
            <numerusform>Los %n caminos más anchos para %1 a %2, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in, by smallest gap</source>
        <translation>
            <numerusform>Un camino de entrada</numerusform>
            <numerusform>%n caminos de entrada, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in for %1, by smallest gap</source>
        <translation>
            <numerusform>Un camino de entrada para %1</numerusform>
            <numerusform>%n caminos de entrada para %1, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) into %1, by smallest gap</source>
        <translation>
            <numerusform>Un camino a %1</numerusform>
            <numerusform>%n caminos a %1, por su hueco más estrecho</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) in for %1 into %2, by smallest gap</source>
        <translation>
            <numerusform>Un camino para %1 a %2</numerusform>
            <numerusform>%n caminos para %1 a %2, por su hueco más estrecho</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>survey</name>
    <message>
        <source>closed, and open again</source>
        <translation>cerrado, y abierto otra vez</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>closed on %1</source>
        <translation>cerrado el %1</translation>
    </message>
    <message>
        <source>closed: %1</source>
        <comment>treatment</comment>
        <translation>cerrado: %1</translation>
    </message>
    <message>
        <source>closed on %1: %2</source>
        <comment>day, treatment</comment>
        <translation>cerrado el %1: %2</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>from drawings</source>
        <translation>de los planos</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>not said how</source>
        <translation>no se dijo cómo</translation>
    </message>
    <message>
        <source>%1, give or take %2</source>
        <comment>how known, length</comment>
        <translation>%1, más o menos %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two spaces</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>slot, %1 long</source>
        <translation>rendija, %1 de largo</translation>
    </message>
    <message>
        <source>ring around a pipe of %1</source>
        <translation>anillo alrededor de un tubo de %1</translation>
    </message>
    <message>
        <source>screened opening</source>
        <translation>abertura con malla</translation>
    </message>
    <message>
        <source>round hole</source>
        <translation>agujero redondo</translation>
    </message>
</context>
<context>
    <name>ways</name>
    <message>
        <source>%1, one of %2</source>
        <comment>width, count</comment>
        <translation>%1, uno de %2</translation>
    </message>
    <message>
        <source>%1, position not given</source>
        <comment>width</comment>
        <translation>%1, posición no indicada</translation>
    </message>
    <message>
        <source>%1, smallest</source>
        <comment>width</comment>
        <translation>%1, el más estrecho</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>más que %1</translation>
    </message>
    <message>
        <source>thinner than %1</source>
        <translation>menos que %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 y %2</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, supuesto</translation>
    </message>
    <message>
        <source>never close: %1</source>
        <translation>no cerrar nunca: %1</translation>
    </message>
    <message>
        <source>stays open: %1</source>
        <translation>queda abierto: %1</translation>
    </message>
    <message>
        <source>Open to none of this job&apos;s animals.</source>
        <translation>No está abierto a ninguno de los animales de este trabajo.</translation>
    </message>
    <message>
        <source>Open to: %1.</source>
        <translation>Abierto a: %1.</translation>
    </message>
    <message>
        <source>Open to: perhaps %1, if widths are larger by their plus-minus.</source>
        <translation>Abierto a: quizá %1, si los anchos son mayores por su más o menos.</translation>
    </message>
    <message>
        <source>Open to: %1; perhaps %2, if widths are larger by their plus-minus.</source>
        <translation>Abierto a: %1; quizá %2, si los anchos son mayores por su más o menos.</translation>
    </message>
    <message>
        <source>%1, gap&#xa0;%2&#xa0;of&#xa0;%3</source>
        <translation>%1, hueco&#xa0;%2&#xa0;de&#xa0;%3</translation>
    </message>
    <message>
        <source>Way in %1: into %2, smallest gap %3, %4</source>
        <translation>Camino %1: a %2, hueco más estrecho %3, %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a way in, that its gap stays open</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Way in %1, into %2</source>
        <translation>Camino %1, a %2</translation>
    </message>
    <message>
        <source>Smallest gap: %1. In the hand: %2.</source>
        <translation>Hueco más estrecho: %1. En la mano: %2.</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>To check in this survey</source>
        <translation>Por revisar en esta inspección</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>shape, width</comment>
        <translation>%1, %2</translation>
    </message>
</context>
</TS>
