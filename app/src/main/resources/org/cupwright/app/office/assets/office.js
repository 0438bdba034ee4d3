// Pages work without this file; with it they answer without being laid anew.
"use strict";
