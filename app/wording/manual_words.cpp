#include "app/wording/manual_words.h"

namespace rig {

QString ManualWords::menu() { return tr("Manual"); }
QString ManualWords::heading() { return tr("Manual"); }
QString ManualWords::chapters() { return tr("Chapters of the manual"); }

QString ManualWords::keys()
{
    return tr("Up, Down: another chapter. Page Down, Page Up: on and back in the text. Tab: the links in it. "
              "Esc: back.");
}

QString ManualWords::save() { return tr("Save the manual as PDF …  (Ctrl+P)"); }
QString ManualWords::saveHint() { return tr("All chapters, to print."); }
QString ManualWords::paper() { return tr("Paper of the manual"); }
QString ManualWords::pdfFiles() { return tr("PDF files (*.pdf)"); }

} // namespace rig
