// Read by moc before every header it looks at. Qt 6.4's moc stumbles over <compare> when no other standard
// header came before it ("Parse error at std"); this one brings the macro it misses.
#include <cstddef>
