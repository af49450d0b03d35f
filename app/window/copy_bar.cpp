#include "app/window/copy_bar.h"

#include "app/widgets/parts.h"
#include "app/window/button_key.h"
#include "app/wording/copy_words.h"

namespace rig {

CopyBar::CopyBar(QWidget* parent) : MarkedBar{"copyBar", Tone::Caution, parent}
{
    mark(MarkShape::HalfDisc, Role::InkSoft);
    const auto addPressed = [&](const QString& text, const QString& hint, const char* name, Qt::Key key,
                                void (CopyBar::*asked)()) {
        QPushButton* button = buttonOf(text, name);
        button->setToolTip(hint);
        pressOnControl(key, button);
        connect(button, &QPushButton::clicked, this, asked);
        add(button);
    };
    addPressed(CopyWords::bringBack(), CopyWords::bringBackHint(), "bringBackLooked", Qt::Key_B,
               &CopyBar::bringBackAsked);
    addPressed(CopyWords::backToFile(), CopyWords::backToFileHint(), "leaveCopy", Qt::Key_W,
               &CopyBar::backAsked);
}

} // namespace rig
