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
        <source>The program failed. What it says:</source>
        <translation>El programa falló. Lo que dice:</translation>
    </message>
    <message>
        <source>This cannot be opened. What is wrong, and where:</source>
        <translation>Esto no se puede abrir. Qué está mal, y dónde:</translation>
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
        <source>Nothing is ticked: the house as it stands. Slide along the price.</source>
        <translation>No hay nada marcado: la casa tal como está. Deslice por el precio.</translation>
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
        <source>No price goes further: %1 stays open at %2.</source>
        <translation>Ningún precio llega más lejos: queda abierto %1 en %2.</translation>
    </message>
    <message>
        <source>It is too narrow for %1 by only %2, and that animal&apos;s size is not known so exactly.</source>
        <translation>Es demasiado estrecho para %1 por solo %2, y el tamaño de ese animal no se conoce con tanta exactitud.</translation>
    </message>
    <message>
        <source>Nothing is ticked: the house as it stands.</source>
        <translation>No hay nada marcado: la casa tal como está.</translation>
    </message>
    <message>
        <source>For %1 no way in at all is left.</source>
        <translation>Por %1 no queda ningún camino de entrada.</translation>
    </message>
    <message>
        <source>For %1 the widest way left is up to %2.</source>
        <translation>Por %1 el camino más ancho que queda es de hasta %2.</translation>
    </message>
    <message>
        <source>%1 Closing other gaps would do as much for %2.</source>
        <translation>%1 Cerrar otros huecos lograría lo mismo por %2.</translation>
    </message>
    <message>
        <source>%1, up to %2, %3 pieces</source>
        <translation>%1, hasta %2, %3 piezas</translation>
    </message>
    <message>
        <source>%1, up to %2</source>
        <translation>%1, hasta %2</translation>
    </message>
    <message>
        <source>* Not checked against the document itself: named from memory, or as others quote it.</source>
        <translation>* Sin comparar con el documento mismo: citado de memoria, o como otros lo citan.</translation>
    </message>
    <message>
        <source>%1 The widest way that stays open to an animal is up to %2, %3.</source>
        <translation>%1 El camino más ancho que queda abierto a un animal es de hasta %2, %3.</translation>
    </message>
</context>
<context>
    <name>drill</name>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>right</source>
        <translation>correcto</translation>
    </message>
    <message>
        <source>partly right</source>
        <translation>correcto en parte</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>no encontrado</translation>
    </message>
    <message>
        <source>false alarm</source>
        <translation>falsa alarma</translation>
    </message>
    <message>
        <source>does harm</source>
        <translation>hace daño</translation>
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
    <name>model_words</name>
    <message>
        <source>This survey was found in a builder&apos;s model, which draws no gap at all.</source>
        <translation>Esta inspección se sacó de un modelo del constructor, que no dibuja ningún hueco.</translation>
    </message>
    <message numerus="yes">
        <source>This survey was found in a builder&apos;s model, which draws %n gap(s).</source>
        <translation>
            <numerusform>Esta inspección se sacó de un modelo del constructor, que dibuja %n hueco.</numerusform>
            <numerusform>Esta inspección se sacó de un modelo del constructor, que dibuja %n huecos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joint(s) between its parts are drawn shut, and nobody has measured them.</source>
        <translation>
            <numerusform>%n junta entre sus partes está dibujada cerrada, y nadie la ha medido.</numerusform>
            <numerusform>%n juntas entre sus partes están dibujadas cerradas, y nadie las ha medido.</numerusform>
        </translation>
    </message>
    <message>
        <source>A house drawn tight need not be tight: look at the joints on site, and measure.</source>
        <translation>Una casa dibujada sin huecos puede tenerlos: revise las juntas en el sitio, y mida.</translation>
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
        <source>Nothing can be written into this folder; choose another one.</source>
        <translation>No se puede escribir en esta carpeta; elija otra.</translation>
    </message>
    <message>
        <source>%1 is in this folder already; give the house another name, or choose another folder.</source>
        <translation>%1 ya está en esta carpeta; dé otro nombre a la casa, o elija otra carpeta.</translation>
    </message>
    <message>
        <source>Rooms are laid out only where all walls run along the street or straight back from it; choose no rooms.</source>
        <translation>Los cuartos se trazan solo donde todos los muros van a lo largo de la calle o derecho hacia el fondo; elija sin cuartos.</translation>
    </message>
    <message>
        <source>This house is too small or too narrow for rooms; choose no rooms.</source>
        <translation>Esta casa es demasiado chica o angosta para cuartos; elija sin cuartos.</translation>
    </message>
    <message numerus="yes">
        <source>%n bedroom(s)</source>
        <translation>
            <numerusform>%n recámara</numerusform>
            <numerusform>%n recámaras</numerusform>
        </translation>
    </message>
    <message>
        <source>So many rooms do not fit into this outline: %1 with %2 would.</source>
        <translation>En este contorno no caben tantos cuartos: sí caben %1 con %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n bath(s)</source>
        <translation>
            <numerusform>%n baño</numerusform>
            <numerusform>%n baños</numerusform>
        </translation>
    </message>
    <message>
        <source>This is a file; give a folder.</source>
        <translation>Esto es un archivo; dé una carpeta.</translation>
    </message>
    <message>
        <source>There is no such folder, nor the one that it would be in.</source>
        <translation>No existe esa carpeta, ni aquella en la que estaría.</translation>
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
    <message>
        <source>%1
%2</source>
        <translation>%1
%2</translation>
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
    <name>seamward::viewer::DrillAnswerForm</name>
    <message>
        <source>%1. %2</source>
        <comment>number and name of a place</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>A gap joins two different spaces.</source>
        <translation>Un hueco une dos espacios distintos.</translation>
    </message>
    <message>
        <source>Say how wide one opening of the mesh is.</source>
        <translation>Diga qué tan ancha es una abertura de la malla.</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>Click a place on the house, or choose one in the list, to say what you found there.</source>
        <translation>Haga clic en un lugar de la casa, o elija uno en la lista, para decir qué encontró ahí.</translation>
    </message>
    <message>
        <source>Loo&amp;k closely</source>
        <translation>&amp;Mirar de cerca</translation>
    </message>
    <message>
        <source>What eyes, hands and the gauges in the bag tell of this place</source>
        <translation>Lo que ojos, manos y las galgas de la bolsa dicen de este lugar</translation>
    </message>
    <message>
        <source>What a close look tells</source>
        <translation>Lo que se ve de cerca</translation>
    </message>
    <message>
        <source>It is &amp;open</source>
        <translation>Está a&amp;bierto</translation>
    </message>
    <message>
        <source>It is ti&amp;ght</source>
        <translation>Está cerra&amp;do</translation>
    </message>
    <message>
        <source>How &amp;wide, in any unit</source>
        <translation>Anc&amp;ho, en cualquier unidad</translation>
    </message>
    <message>
        <source>1/16 in, 1.6 mm</source>
        <translation>1/16 in, 1.6 mm</translation>
    </message>
    <message>
        <source>How wide</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>It joins this space ...</source>
        <translation>Une este espacio ...</translation>
    </message>
    <message>
        <source>... and this one</source>
        <translation>... y este otro</translation>
    </message>
    <message>
        <source>One space that it joins</source>
        <translation>Un espacio que une</translation>
    </message>
    <message>
        <source>The other space that it joins</source>
        <translation>El otro espacio que une</translation>
    </message>
    <message>
        <source>Close &amp;it with, or leave it as it is</source>
        <translation>C&amp;on qué cerrarlo, o dejarlo como está</translation>
    </message>
    <message>
        <source>What to close it with</source>
        <translation>Con qué cerrarlo</translation>
    </message>
    <message>
        <source>One opening of the mesh</source>
        <translation>Una abertura de la malla</translation>
    </message>
    <message>
        <source>Close only once the animal has left</source>
        <translation>Cerrar solo cuando el animal haya salido</translation>
    </message>
    <message>
        <source>The animal that was seen came in here</source>
        <translation>Por aquí entró el animal que se vio</translation>
    </message>
    <message>
        <source>&amp;Remove this answer</source>
        <translation>&amp;Quitar esta respuesta</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillCard</name>
    <message>
        <source>Do this drill</source>
        <translation>Hacer este ejercicio</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillDocument</name>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillJudged</name>
    <message>
        <source>This does harm</source>
        <translation>Esto hace daño</translation>
    </message>
    <message>
        <source>Place by place</source>
        <translation>Lugar por lugar</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and name of a place</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Besides</source>
        <translation>Además</translation>
    </message>
    <message>
        <source>Kept in %1: attempt %2 of %3 at this drill</source>
        <translation>Guardado en %1: intento %2 de %3 en este ejercicio</translation>
    </message>
    <message>
        <source>How it went</source>
        <translation>Cómo salió</translation>
    </message>
    <message>
        <source>L&amp;ook again</source>
        <translation>Mirar &amp;otra vez</translation>
    </message>
    <message>
        <source>The same drill anew, from the beginning</source>
        <translation>El mismo ejercicio de nuevo, desde el principio</translation>
    </message>
    <message>
        <source>&amp;Save the answers...</source>
        <translation>&amp;Guardar las respuestas...</translation>
    </message>
    <message>
        <source>&amp;Keep the result...</source>
        <translation>Guardar el res&amp;ultado...</translation>
    </message>
    <message>
        <source>Adds this attempt to the file in which your progress is kept</source>
        <translation>Agrega este intento al archivo en el que se guarda su avance</translation>
    </message>
    <message>
        <source>&amp;Leave the drill</source>
        <translation>&amp;Salir del ejercicio</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillPage</name>
    <message>
        <source>No place of this drill is within reach of there. Click closer to one, or take it from the list.</source>
        <translation>Ningún lugar de este ejercicio queda cerca de ahí. Haga clic más cerca de uno, o tómelo de la lista.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and name of a place</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place, verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>Nothing is said of %n place(s).</source>
        <translation>
            <numerusform>No ha dicho nada de un lugar.</numerusform>
            <numerusform>No ha dicho nada de %n lugares.</numerusform>
        </translation>
    </message>
    <message>
        <source>Seamward</source>
        <translation>Seamward</translation>
    </message>
    <message>
        <source>Once it is handed in, what you found is judged and cannot be changed.</source>
        <translation>Una vez entregado, lo que encontró se califica y ya no se puede cambiar.</translation>
    </message>
    <message>
        <source>&amp;Hand in</source>
        <translation>&amp;Entregar</translation>
    </message>
    <message>
        <source>&amp;Look further</source>
        <translation>&amp;Seguir mirando</translation>
    </message>
    <message>
        <source>Save the answers</source>
        <translation>Guardar las respuestas</translation>
    </message>
    <message>
        <source>Answers (*.yaml)</source>
        <translation>Respuestas (*.yaml)</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Se guardó %1</translation>
    </message>
    <message>
        <source>What you found in this drill was not handed in. It is gone once you leave.</source>
        <translation>Lo que encontró en este ejercicio no se ha entregado. Si sale, se pierde.</translation>
    </message>
    <message>
        <source>&amp;Leave the drill</source>
        <translation>&amp;Salir del ejercicio</translation>
    </message>
    <message>
        <source>&amp;Stay</source>
        <translation>&amp;Quedarse</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillPlaces</name>
    <message>
        <source>width not said</source>
        <translation>sin ancho</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two spaces</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>spaces not said</source>
        <translation>sin espacios</translation>
    </message>
    <message>
        <source>treatment not said</source>
        <translation>sin tratamiento</translation>
    </message>
    <message>
        <source>once the animal has left</source>
        <translation>cuando el animal haya salido</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and name of a place</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>Said so far: %1 of %2 places</source>
        <translation>Dicho hasta ahora: %1 de %2 lugares</translation>
    </message>
    <message>
        <source>Places to look at</source>
        <translation>Lugares que revisar</translation>
    </message>
    <message>
        <source>&amp;Next place</source>
        <translation>&amp;Siguiente lugar</translation>
    </message>
    <message>
        <source>To the next place that nothing is said of</source>
        <translation>Al siguiente lugar del que no ha dicho nada</translation>
    </message>
    <message>
        <source>Han&amp;d in...</source>
        <translation>Entre&amp;gar...</translation>
    </message>
    <message>
        <source>What you found is judged then</source>
        <translation>Entonces se califica lo que encontró</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::DrillTask</name>
    <message>
        <source>Trainee: %1</source>
        <translation>Aprendiz: %1</translation>
    </message>
    <message>
        <source>Trainee: %1; progress is kept in %2</source>
        <translation>Aprendiz: %1; el avance se guarda en %2</translation>
    </message>
    <message>
        <source>Drill, %1; places to look at: %2</source>
        <comment>difficulty, count</comment>
        <translation>Ejercicio %1; lugares que revisar: %2</translation>
    </message>
    <message>
        <source>Against these animals</source>
        <translation>Contra estos animales</translation>
    </message>
    <message>
        <source>They live in the house</source>
        <translation>Viven en la casa</translation>
    </message>
    <message>
        <source>A question besides</source>
        <translation>Una pregunta más</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Go round the house in the picture and click a place that you want to look at, or take the places one by one from the list. Look closely, say whether it is open, how wide, which two spaces it joins, and what to close it with. Then hand in.</source>
        <translation>Dé la vuelta a la casa en la imagen y haga clic en un lugar que quiera revisar, o tome los lugares uno por uno de la lista. Mire de cerca, diga si está abierto, qué tan ancho es, qué dos espacios une y con qué cerrarlo. Después entregue.</translation>
    </message>
    <message>
        <source>How it is judged</source>
        <translation>Cómo se califica</translation>
    </message>
    <message>
        <source>What the drill is about</source>
        <translation>De qué trata el ejercicio</translation>
    </message>
    <message>
        <source>&amp;Go to the places</source>
        <translation>Ir a los &amp;lugares</translation>
    </message>
    <message>
        <source>&amp;Your name...</source>
        <translation>Su &amp;nombre...</translation>
    </message>
    <message>
        <source>Your name, and the file in which your progress is kept</source>
        <translation>Su nombre, y el archivo en el que se guarda su avance</translation>
    </message>
    <message>
        <source>&amp;Leave the drill</source>
        <translation>&amp;Salir del ejercicio</translation>
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
    <message>
        <source>It cannot stand there: %1.</source>
        <comment>a place</comment>
        <translation>No puede ir ahí: %1.</translation>
    </message>
    <message>
        <source>Where it is cannot be told by one place: it runs along several parts of the house, or through air that something else encloses. Its place is changed in the file of the house, %1.</source>
        <translation>Dónde está no se puede decir con un solo lugar: corre por varias partes de la casa, o por aire que otra cosa encierra. Su lugar se cambia en el archivo de la casa, %1.</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>something on the house</comment>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>A width that you change counts as measured.</source>
        <translation>El ancho que usted cambie cuenta como medido.</translation>
    </message>
    <message>
        <source>&amp;Apply the changes</source>
        <translation>A&amp;plicar los cambios</translation>
    </message>
    <message>
        <source>Its place goes into the file of the house, %1, measured widths into that of the job. It can be undone.</source>
        <translation>Su lugar queda en el archivo de la casa, %1, y los anchos medidos en el del trabajo. Se puede deshacer.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Takes it out of the file of the house, %1, with all of its gaps, and what the job says of them. It can be undone.</source>
        <translation>Lo quita del archivo de la casa, %1, con todos sus huecos y lo que el trabajo dice de ellos. Se puede deshacer.</translation>
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
    <message>
        <source>%1, cross-section %2 by %3: perhaps fits, if the gap is as wide as it may be.</source>
        <translation>%1, corte del cuerpo de %2 por %3: quizá pasa, si el hueco es tan ancho como puede ser.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::GapFields</name>
    <message>
        <source>Another space...</source>
        <translation>Otro espacio...</translation>
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
        <translation>Diámetr&amp;o</translation>
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
        <source>Give or ta&amp;ke</source>
        <translation>Más o me&amp;nos</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forma</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
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
        <translation>Marcar &amp;que está abierto</translation>
    </message>
    <message>
        <source>M&amp;ark as closed</source>
        <translation>Marcar &amp;que está cerrado</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>It is part of the described house: what makes it can be moved or removed, with all of its gaps.</source>
        <translation>Es parte de la casa descrita: lo que lo forma se puede mover o quitar, con todos sus huecos.</translation>
    </message>
    <message>
        <source>Mo&amp;ve...</source>
        <translation>Mo&amp;ver...</translation>
    </message>
    <message>
        <source>Sh&amp;ow...</source>
        <translation>Mostrar en &amp;imagen...</translation>
    </message>
    <message>
        <source>P&amp;ipe</source>
        <translation>Tu&amp;bo</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Malla</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>No&amp;mbre</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>No&amp;ta</translation>
    </message>
    <message>
        <source>Mo&amp;ve or remove...</source>
        <translation>Mo&amp;ver o quitar...</translation>
    </message>
    <message>
        <source>What makes this gap, such as a pipe or a door&apos;s sweep: its place, its name and all of its gaps.</source>
        <translation>Lo que forma este hueco, como un tubo o el guardapolvo de una puerta: su lugar, su nombre y todos sus huecos.</translation>
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
    <message numerus="yes">
        <source>Also %n gap(s) between two places indoors</source>
        <translation>
            <numerusform>También %n hueco entre dos lugares interiores</numerusform>
            <numerusform>También %n huecos entre dos lugares interiores</numerusform>
        </translation>
    </message>
    <message>
        <source>They lie on no way in, whatever is open: inside of cabinets, or between two rooms</source>
        <translation>No están en ningún camino de entrada, pase lo que pase: dentro de gabinetes, o entre dos cuartos</translation>
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
    <message>
        <source>%1 (%2), changed %3</source>
        <comment>job, its file, day and time</comment>
        <translation>%1 (%2), cambiado %3</translation>
    </message>
    <message>
        <source>Open a &amp;drill...</source>
        <translation>Abrir un e&amp;jercicio...</translation>
    </message>
    <message>
        <source>Open a drill</source>
        <translation>Abrir un ejercicio</translation>
    </message>
    <message>
        <source>Drills (*.yaml *.yml *.json);;All files (*)</source>
        <translation>Ejercicios (*.yaml *.yml *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Write a report</source>
        <translation>Escribir un informe</translation>
    </message>
    <message>
        <source>Reports (*.%1)</source>
        <translation>Informes (*.%1)</translation>
    </message>
    <message>
        <source>The report is written: %1</source>
        <translation>El informe está escrito: %1</translation>
    </message>
    <message>
        <source>&amp;Look at it</source>
        <translation>&amp;Verlo</translation>
    </message>
    <message>
        <source>&amp;Write a report...</source>
        <translation>Escribir un in&amp;forme...</translation>
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
    <message>
        <source>The model draws no gap that could be measured.</source>
        <translation>El modelo no dibuja ningún hueco que se pueda medir.</translation>
    </message>
    <message numerus="yes">
        <source>Looked at: %n part(s) of the model, for gaps from %1 to %2.</source>
        <translation>
            <numerusform>Revisado: %n parte del modelo, buscando huecos de %1 a %2.</numerusform>
            <numerusform>Revisadas: %n partes del modelo, buscando huecos de %1 a %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n joint(s) between parts are drawn shut, and nobody has measured them. They stand in the survey with no width.</source>
        <translation>
            <numerusform>%n junta entre partes está dibujada cerrada, y nadie la ha medido. Está en la inspección sin ancho.</numerusform>
            <numerusform>%n juntas entre partes están dibujadas cerradas, y nadie las ha medido. Están en la inspección sin ancho.</numerusform>
        </translation>
    </message>
    <message>
        <source>A house drawn tight need not be tight: what is not found here proves nothing. Look at the joints on site, and measure.</source>
        <translation>Una casa dibujada sin huecos puede tenerlos: lo que aquí no se encuentra no prueba nada. Revise las juntas en el sitio, y mida.</translation>
    </message>
    <message>
        <source>No air of the model is closed in enough to be a room, so no way in can end anywhere. Perhaps it draws only a part of a house, or walls without a floor and a roof.</source>
        <translation>Ningún aire del modelo está lo bastante encerrado para ser un cuarto, así que ningún camino de entrada puede terminar. Quizá dibuja solo una parte de una casa, o muros sin piso ni techo.</translation>
    </message>
    <message>
        <source>What that means</source>
        <translation>Lo que eso significa</translation>
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
        <translation>&amp;Carpeta para sus dos archivos</translation>
    </message>
    <message>
        <source>C&amp;hoose...</source>
        <translation>Eleg&amp;ir...</translation>
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
        <translation>Es&amp;quinas en orden, una por línea: a la derecha, y desde la calle hacia el fondo</translation>
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
        <translation>&amp;Pisos</translation>
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
        <source>It s&amp;tands on</source>
        <translation>Está so&amp;bre</translation>
    </message>
    <message>
        <source>B&amp;edrooms</source>
        <translation>&amp;Recámaras</translation>
    </message>
    <message>
        <source>No rooms laid out</source>
        <translation>Sin cuartos</translation>
    </message>
    <message>
        <source>1 bedroom</source>
        <translation>1 recámara</translation>
    </message>
    <message>
        <source>2 bedrooms</source>
        <translation>2 recámaras</translation>
    </message>
    <message>
        <source>3 bedrooms</source>
        <translation>3 recámaras</translation>
    </message>
    <message>
        <source>4 bedrooms</source>
        <translation>4 recámaras</translation>
    </message>
    <message>
        <source>5 bedrooms</source>
        <translation>5 recámaras</translation>
    </message>
    <message>
        <source>Bathroo&amp;ms</source>
        <translation>Baño&amp;s</translation>
    </message>
    <message>
        <source>1 bath</source>
        <translation>1 baño</translation>
    </message>
    <message>
        <source>2 baths</source>
        <translation>2 baños</translation>
    </message>
    <message>
        <source>3 baths</source>
        <translation>3 baños</translation>
    </message>
    <message>
        <source>Floor that the sketch shows</source>
        <translation>Piso que muestra el dibujo</translation>
    </message>
    <message>
        <source>Ground floor</source>
        <translation>Planta baja</translation>
    </message>
    <message>
        <source>Upper floor</source>
        <translation>Planta alta</translation>
    </message>
    <message>
        <source>Rooms, doors, windows, pipes and vents come at their usual places, gaps with usual widths, marked as assumed. Check each on site.</source>
        <translation>Cuartos, puertas, ventanas, tubos y rejillas quedan en sus lugares de costumbre, los huecos con anchos de costumbre, marcados como supuestos. Revise cada uno en el sitio.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Closes this; the answers stay until the program ends</source>
        <translation>Cierra esto; las respuestas quedan hasta que termine el programa</translation>
    </message>
    <message>
        <source>Begin afresh</source>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Takes back all answers</source>
        <translation>Borra todas las respuestas</translation>
    </message>
    <message>
        <source>Ma&amp;ke the house</source>
        <translation>&amp;Hacer la casa</translation>
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
    <message>
        <source>living room</source>
        <translation>sala</translation>
    </message>
    <message>
        <source>kitchen</source>
        <translation>cocina</translation>
    </message>
    <message>
        <source>hall</source>
        <translation>pasillo</translation>
    </message>
    <message>
        <source>main bedroom</source>
        <translation>recámara principal</translation>
    </message>
    <message>
        <source>bedroom</source>
        <translation>recámara</translation>
    </message>
    <message>
        <source>bath</source>
        <translation>baño</translation>
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
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>Choose a photo...</source>
        <translation>Elegir una foto...</translation>
    </message>
    <message>
        <source>Photo...</source>
        <translation>Foto...</translation>
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
    <message>
        <source>Arrived in: %1</source>
        <translation>Llegada a: %1</translation>
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
    <message>
        <source>There is no picture of this house. Take the places from the list.</source>
        <translation>No hay imagen de esta casa. Tome los lugares de la lista.</translation>
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
    <message>
        <source>%1 The prices go on to %2.</source>
        <translation>%1 Los precios siguen hasta %2.</translation>
    </message>
    <message>
        <source>goes on to %1</source>
        <translation>sigue hasta %1</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>plan %1</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
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
    <name>seamward::viewer::ReportDialog</name>
    <message>
        <source>Write a report</source>
        <translation>Escribir un informe</translation>
    </message>
    <message>
        <source>&amp;For whom</source>
        <translation>&amp;Para quién</translation>
    </message>
    <message>
        <source>The homeowner: what was found, what it costs to close</source>
        <translation>El dueño de la casa: qué se encontró y cuánto cuesta cerrarlo</translation>
    </message>
    <message>
        <source>The crew: steps in working order</source>
        <translation>La cuadrilla: los pasos en orden de trabajo</translation>
    </message>
    <message>
        <source>The builder: details, and what published rules say</source>
        <translation>El constructor: los detalles y lo que dicen las normas publicadas</translation>
    </message>
    <message>
        <source>An owner who does a part of it</source>
        <translation>Un dueño que hace una parte</translation>
    </message>
    <message>
        <source>Whoever surveys: a sheet to fill in</source>
        <translation>Quien inspecciona: una hoja para llenar</translation>
    </message>
    <message>
        <source>&amp;Written as</source>
        <translation>Escrito c&amp;omo</translation>
    </message>
    <message>
        <source>A page for phones and browsers (.html)</source>
        <translation>Una página para teléfonos y navegadores (.html)</translation>
    </message>
    <message>
        <source>Sheets to print (.pdf)</source>
        <translation>Hojas para imprimir (.pdf)</translation>
    </message>
    <message>
        <source>Tables of gaps, closings and materials (.xlsx)</source>
        <translation>Tablas de huecos, cierres y materiales (.xlsx)</translation>
    </message>
    <message>
        <source>In which &amp;language</source>
        <translation>En qué &amp;idioma</translation>
    </message>
    <message>
        <source>W&amp;idths</source>
        <translation>&amp;Anchos</translation>
    </message>
    <message>
        <source>Inches, and millimeters beside them</source>
        <translation>Pulgadas, y milímetros al lado</translation>
    </message>
    <message>
        <source>Millimeters only</source>
        <translation>Solo milímetros</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>Pape&amp;l</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Where &amp;to...</source>
        <translation>A &amp;dónde...</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>The sheet has the job as it stands here. As a page it can be filled in on a phone, without a network, and gives the job back.</source>
        <translation>La hoja tiene el trabajo tal como está aquí. Como página se puede llenar en un teléfono, sin red, y devuelve el trabajo.</translation>
    </message>
    <message>
        <source>The plan is made anew against the animals chosen under Closings, at the cheapest that keeps all of them out. Ticks and treatments chosen by hand are not in it.</source>
        <translation>El plan se hace de nuevo contra los animales elegidos en Cierres, lo más barato que los deja afuera a todos. Las marcas y los tratamientos elegidos a mano no entran en él.</translation>
    </message>
</context>
<context>
    <name>seamward::viewer::ReportDocument</name>
    <message>
        <source>The model has %1 triangles, more than a page can carry: there are no drawings.</source>
        <translation>El modelo tiene %1 triángulos, más de lo que cabe en una página: no hay dibujos.</translation>
    </message>
    <message>
        <source>%1 cannot be shown as a photo.</source>
        <translation>%1 no se puede mostrar como foto.</translation>
    </message>
    <message>
        <source>%1 is no name of a report: it ends in .html, .pdf or .xlsx.</source>
        <translation>%1 no es nombre de un informe: termina en .html, .pdf o .xlsx.</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Escribiendo %1</translation>
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
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Key: -</source>
        <translation>Tecla: -</translation>
    </message>
    <message>
        <source>Faster</source>
        <translation>Más rápido</translation>
    </message>
    <message>
        <source>Key: +</source>
        <translation>Tecla: +</translation>
    </message>
    <message>
        <source>%1 x</source>
        <comment>times the usual speed</comment>
        <translation>%1 x</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>At the speed shown here</source>
        <translation>A la velocidad que se muestra aquí</translation>
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
    <message>
        <source>Animals &amp;may already be there</source>
        <translation>Puede que ya haya ani&amp;males</translation>
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
    <message>
        <source>Drills to train on</source>
        <translation>Ejercicios para practicar</translation>
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
    <name>seamward::viewer::TraineeDialog</name>
    <message>
        <source>Who does the drill</source>
        <translation>Quién hace el ejercicio</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;File in which progress is kept; empty: it is not</source>
        <translation>&amp;Archivo en el que se guarda el avance; vacío: no se guarda</translation>
    </message>
    <message>
        <source>&amp;Choose...</source>
        <translation>&amp;Elegir...</translation>
    </message>
    <message>
        <source>Each attempt that is handed in adds a line to the file. A class may share one file.</source>
        <translation>Cada intento que se entrega agrega una línea al archivo. Un grupo puede compartir un archivo.</translation>
    </message>
    <message>
        <source>&amp;Use this</source>
        <translation>&amp;Usar esto</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>File in which progress is kept</source>
        <translation>Archivo en el que se guarda el avance</translation>
    </message>
    <message>
        <source>Progress files (*.jsonl)</source>
        <translation>Archivos de avance (*.jsonl)</translation>
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
    <message>
        <source>Open to: perhaps %1, if gaps are as wide as they may be.</source>
        <translation>Abierto a: quizá %1, si los huecos son tan anchos como pueden ser.</translation>
    </message>
    <message>
        <source>Open to: %1; perhaps %2, if gaps are as wide as they may be.</source>
        <translation>Abierto a: %1; quizá %2, si los huecos son tan anchos como pueden ser.</translation>
    </message>
</context>
</TS>
