import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from '@nestjs/common';
import type { Response } from 'express';
import { type Observable, tap } from 'rxjs';

/** Answers 200 instead of 201 when a receipt says that the same request had been recorded before. */
@Injectable()
export class ReceiptStatus implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    return next.handle().pipe(
      tap((answer: unknown) => {
        if (typeof answer === 'object' && answer !== null && 'replayed' in answer && answer.replayed === true) {
          context.switchToHttp().getResponse<Response>().status(200);
        }
      }),
    );
  }
}
