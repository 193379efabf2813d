import { Module } from '@nestjs/common';
import { OwnHullsController } from './own-hulls.controller.js';
import { Acknowledge } from './acknowledge.js';
import { ReadOwnNews } from './own-news.query.js';
import { OwnHulls } from './own-hulls.query.js';

/** What a dealer sees of own hulls, and of no others. */
@Module({ controllers: [OwnHullsController], providers: [OwnHulls, ReadOwnNews, Acknowledge] })
export class OwnHullsModule {}
