// Dangers in Spanish, and a little Portuguese.

import type { DangerRule } from '../rules/rule.ts'

export const spanish: readonly DangerRule[] = [
  {
    danger: 'swollen',
    tells: `hinchada|hinchado|hinchadas|hinchados, se hincho, se ha hinchado, inflada|inflado,
      abombada|abombado, como un globo, gordita, inchada|inchado`,
    passes: true,
  },
  {
    danger: 'pierced',
    tells: `pinchada|pinchado, perforada|perforado, agujero .4 bateria|celda|lipo,
      bateria|celda|lipo .4 agujero|golpe|corte|rota|abollada|aplastada, abollada|abollado,
      aplastada|aplastado, rajada|rajado, pierde liquido, furada`,
    passes: true,
  },
  {
    danger: 'crashed',
    tells: 'se estrello, estrellado, estrellada, se cayo, choco contra, accidente con el avion, caiu',
    passes: true,
  },
  {
    danger: 'wet',
    tells: `cayo .3 agua, al agua, en el agua, en el lago|rio|mar|charco, mojada|mojado, se mojo,
      bajo la lluvia, en la lavadora, humeda|humedo, molhada`,
    passes: true,
  },
  {
    danger: 'hotPack',
    tells: `todavia caliente, aun caliente, muy caliente, esta caliente, demasiado caliente, quema,
      recien aterrizado, acabo de aterrizar, nada mas aterrizar, se calienta, ainda quente, muito quente`,
  },
  {
    danger: 'coldPack',
    tells: `congelada|congelado, helada|helado, bajo cero, a 0 grados, cero grados, toda la noche en el coche,
      minus # .6 coche|carro, carro .6 minus #, gelada|gelado`,
    excuses: 'na sala, en casa, en el salon, en la cocina, la fora',
  },
  {
    danger: 'fire',
    tells: `humo, echa humo, en llamas, llamas, fuego, se quema, arde, ardiendo, silba,
      huele .4 quemado|dulce|acetona|esmalte, chispas, fumaca, pegando fogo`,
  },
  {
    danger: 'injury',
    tells: `en el ojo, en los ojos, en la piel, en las manos, me queme, me he quemado, quemadura,
      respire el humo, respirado humo, calambre, descarga electrica`,
  },
  {
    danger: 'unattended',
    tells: `toda la noche, por la noche, de noche, durante la noche, sin vigilancia, sin vigilar,
      mientras duermo, mientras dormimos, me voy a dormir, me voy a la cama, a la cama .3 carga*,
      hasta manana, hasta la manana, nadie .3 casa, dejar .4 solo|sola|cargando,
      dejo .4 cargando|sola|solo, mientras .3 ducho|trabajo|compro|estoy fuera,
      voy .3 comprar|compra|trabajo, sin nadie, durante a noite, enquanto durmo`,
    excuses: 'me quedo, al lado, estoy delante, lo vigilo, yo miro el cargador, nunca de noche',
  },
  {
    danger: 'children',
    tells: 'hijo|hija|nino|nina|ninos|perro|gato|gata .5 mira|vigila|cuida|solo|sola|solos',
    excuses: 'con la abuela, yo miro, con su madre',
  },
  {
    danger: 'movingVehicle',
    tells: `mientras conduzco, conduciendo, mientras conduce, en marcha, durante el viaje, durante el trayecto,
      en el tren .4 carg*, en la autopista .5 carg*, en la carretera .4 carg*, a conduzir`,
    excuses: 'aparcado, parado, al llegar',
  },
  {
    danger: 'softBed',
    tells: `encima de la cama, en la cama, sobre la cama, sobre el sofa, en el sofa, encima del sofa,
      en la alfombra, sobre la alfombra, bajo la manta, en la almohada, na cama`,
    excuses: 'en la cama nunca, yo en el sofa',
  },
  {
    danger: 'tooLow',
    tells: `descarga profunda, totalmente descargada, muy descargada, muerta,
      olvide .4 conectada|conectado|desconectar|apagar, se quedo conectada, celda muerta`,
    passes: true,
  },
  {
    danger: 'revive',
    tells: `revivir, resucitar, despertar .3 bateria|lipo, recuperar .3 bateria|lipo, salvar .3 bateria|lipo,
      modo nimh, programa nimh`,
    passes: true,
  },
  {
    danger: 'wrongMode',
    tells: `modo equivocado, programa equivocado, modo incorrecto, en modo life, en modo nimh, en modo lihv,
      en modo equivocado`,
  },
  {
    danger: 'wrongCharger',
    tells: `cargador de nimh, cargador nimh, cargador de plomo,
      cargador de .3 coche|movil|taladro|patinete|juguete, cargador equivocado`,
  },
  {
    danger: 'noCharger',
    tells: `sin cargador, directo .4 fuente|panel|bateria del coche,
      directamente .4 fuente|panel|bateria del coche, panel .4 directo|directamente`,
  },
  {
    danger: 'noBalance',
    tells: `sin balancear, sin el conector de balanceo, sin balanceo, sin cable de balanceo,
      cable de balanceo .4 roto|suelto|arrancado, conector de balanceo .4 roto|arrancado`,
  },
  {
    danger: 'reversed',
    tells: `al reves, polaridad invertida, polaridad cambiada, rojo con negro, positivo y negativo cambiados`,
  },
]
