import { Body, Controller } from '@nestjs/common';
import { routes, type RegisterMaterial as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListMaterials } from './list-materials.query.js';
import { RegisterMaterial } from './register-material.js';

@Controller()
export class MaterialsController {
  constructor(
    private readonly register: RegisterMaterial,
    private readonly list: ListMaterials,
  ) {}

  @Route(routes.registerMaterial)
  add(@Body({ schema: routes.registerMaterial.body }) request: Request) {
    return this.register.run(request);
  }

  @Route(routes.listMaterials)
  all() {
    return this.list.run();
  }
}
