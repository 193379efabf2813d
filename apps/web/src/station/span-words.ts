/** A span of whole minutes as people say it: days and hours, hours and minutes, or minutes (SI symbols). */
export const spanWords = (minutes: number): string => {
  const [days, hours] = [Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60)];
  if (days > 0) return `${days} d ${hours} h`;
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
};
