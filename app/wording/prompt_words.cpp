#include "app/wording/prompt_words.h"

namespace rig {

QString PromptWords::noticeTitle() { return tr("Rigband"); }
QString PromptWords::understood() { return tr("Close"); }
QString PromptWords::leaveAsItIs() { return tr("Leave as it is"); }
QString PromptWords::takeText() { return tr("Enter this"); }
QString PromptWords::newFileTitle() { return tr("Choose a name for the file"); }
QString PromptWords::saveFileTitle() { return tr("Where to write it"); }
QString PromptWords::openFileTitle() { return tr("Choose a file"); }

} // namespace rig
