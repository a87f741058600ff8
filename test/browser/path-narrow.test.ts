// Beside `path.test.ts`, so that two windows share the longest way of all.
import { testWholeWay } from './whole-way.ts';

testWholeWay('in drawer');
