import { Body, Controller, Param } from '@nestjs/common';
import { routes, type IssueDataSheet as IssueRequest, type RegisterMaterial as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { IssueDataSheet } from './issue-data-sheet.js';
import { ListDataSheets } from './list-data-sheets.query.js';
import { ListMaterials } from './list-materials.query.js';
import { RegisterMaterial } from './register-material.js';

@Controller()
export class MaterialsController {
  constructor(
    private readonly register: RegisterMaterial,
    private readonly list: ListMaterials,
    private readonly issueDataSheet: IssueDataSheet,
    private readonly listDataSheets: ListDataSheets,
  ) {}

  @Route(routes.registerMaterial)
  add(@Body({ schema: routes.registerMaterial.body }) request: Request) {
    return this.register.run(request);
  }

  @Route(routes.issueDataSheet)
  issue(@Param('material') material: string, @Body({ schema: routes.issueDataSheet.body }) request: IssueRequest) {
    return this.issueDataSheet.run(material, request);
  }

  @Route(routes.listDataSheets)
  sheets(@Param('material') material: string) {
    return this.listDataSheets.run(material);
  }

  @Route(routes.listMaterials)
  all() {
    return this.list.run();
  }
}
