import { configure } from '@testing-library/react';

// Whether each part of so large a page is hidden takes jsdom minutes to work out; what is seen and what is not is tested in a real browser.
configure({ defaultHidden: true });
