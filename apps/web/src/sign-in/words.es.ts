import type { signInEn } from './words.en.js';

/** The texts of signing in, in Spanish. */
export const signInEs = {
  'signIn.lead': 'Cada anotación se guarda a nombre de quien la hizo.',
  'signIn.demo':
    'Demostración, todo inventado: entre como QUA-01 (calidad), LAM-01 (laminador), INS-01 (inspector), WAR-01 (garantía), DLR-NLM (distribuidor), AUD-01 (auditor) o ADMIN, cada uno con el PIN 402817. Estos PIN sirven solo mientras la demostración está activa.',
  'signIn.badge': 'Credencial',
  'signIn.secret': 'PIN o frase de acceso',
  'signIn.secretHint': 'El PIN sirve en un equipo inscrito y en la máquina misma; en otros sitios, la frase de acceso.',
  'signIn.office': 'Entrar por {name}',
  'signIn.firstTime': 'Primera vez, o PIN perdido',
  'signIn.chooseOwn': 'Elija el suyo',
  'signIn.codeHow':
    'Un administrador le da un código de un solo uso. El del primer administrador lo imprime el servicio al arrancar.',
  'signIn.code': 'Código de un solo uso',
  'signIn.newSecret': 'Nuevo PIN o nueva frase de acceso',
  'signIn.rules': 'Seis cifras o más, o doce caracteres o más.',
  'signIn.choose': 'Elegirlo y entrar',
  'signIn.device': 'Este es el equipo {device}. Quien entra aquí lo toma a su cargo.',
  'signIn.noDevice': 'Este navegador no es un equipo inscrito: lo que se anote aquí nombra el escritorio.',
  'enrol.title': 'Hacer de este navegador un equipo del taller',
  'enrol.lead': 'Escriba el código de un solo uso que un administrador dio para este equipo. Sirve media hora.',
  'enrol.code': 'Código de un solo uso',
  'enrol.do': 'Inscribir este navegador',
  'enrol.done': 'Este navegador es ahora el equipo {device}.',
} satisfies Record<keyof typeof signInEn, string>;
