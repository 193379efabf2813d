import { Body, Controller } from '@nestjs/common';
import { routes, type RegisterEquipment as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListEquipment } from './list-equipment.query.js';
import { RegisterEquipment } from './register-equipment.js';

@Controller()
export class EquipmentController {
  constructor(
    private readonly register: RegisterEquipment,
    private readonly list: ListEquipment,
  ) {}

  @Route(routes.registerEquipment)
  add(@Body({ schema: routes.registerEquipment.body }) request: Request) {
    return this.register.run(request);
  }

  @Route(routes.listEquipment)
  all() {
    return this.list.run();
  }
}
