#pragma once

class QWidget;

namespace rig {

class Prompts;
class Session;

// Asks for another file, shows what would come of taking it in, asks, and says what came. Whether something
// came.
bool takeInAnother(QWidget* parent, Session& session, Prompts& prompts);

} // namespace rig
