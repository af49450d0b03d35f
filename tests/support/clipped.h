#pragma once

#include <string>
#include <vector>

class QWidget;

namespace rig::test {

// What was looked at for room, and what has none.
struct Clipping
{
    int buttons = 0; // seen with a text
    int labels = 0;
    std::vector<std::string> found;
};

// Every button that is seen holds its text, every label has room for its words, and each lies within all that
// hold it; within something that scrolls, it may only go on downwards.
Clipping clippingOn(const QWidget& in);

// Fails for each text without room, and when fewer buttons and labels together were seen than there should
// be.
void expectNothingClipped(const QWidget& in, int atLeast);

// Each widget that is seen and lies partly beyond what holds it, where no bar scrolls to it.
std::vector<std::string> beyondReachOn(const QWidget& in);

} // namespace rig::test
