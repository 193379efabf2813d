/** Faults that tests must notice: name -> the file and the text that is replaced. */
export const PLANTED = {};

/** Replaces the text of the fault that the environment names; a fault whose text is not found throws. */
export function applyFault(source, path) {
  const fault = PLANTED[process.env.FAULT ?? ''];
  if (!fault || !path.endsWith(fault.file)) return source;
  const parts = source.split(fault.find);
  if (parts.length !== 2)
    throw new Error(`Planted fault ${process.env.FAULT}: text stands ${parts.length - 1} times in ${fault.file}`);
  return parts.join(fault.replace);
}
