import { testWholeWay } from './whole-way.ts';

testWholeWay('beside');
