/** SQL: a layer of a schedule as JSON, in the shape of the contract; `y` is its row. */
export const scheduleLayerJson = (
  y: string,
): string => `json_strip_nulls(json_build_object('id', ${y}.id, 'code', ${y}.code,
  'name', ${y}.name, 'zone', ${y}.zone, 'plies', ${y}.plies, 'areaM2', ${y}.area_m2, 'laminate', ${y}.laminate,
  'lossAllowance', ${y}.loss_allowance, 'materials', ${y}.materials, 'readings', ${y}.readings, 'climate', ${y}.climate,
  'layUpWindow', ${y}.lay_up_window, 'predecessors', ${y}.predecessors, 'holdPoint', ${y}.hold_point))`;
