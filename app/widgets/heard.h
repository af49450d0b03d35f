#pragma once

namespace rig {

// What is painted here and known to no screen reader is heard as what it is: a painted button as a button
// that says its name and its detail in one, so that the state is never left out; a picture as a picture.
// Their widgets keep name and detail apart. Once, before the first of them is shown.
void hearWhatIsPainted();

} // namespace rig
