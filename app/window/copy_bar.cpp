#include "app/window/copy_bar.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/window/button_key.h"
#include "app/wording/copy_words.h"

#include <QHBoxLayout>

namespace rig {

CopyBar::CopyBar(QWidget* parent) : QFrame{parent}
{
    setProperty("questions", true);
    setObjectName("copyBar");
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(20, 4, 16, 4);
    layout->setSpacing(10);
    m_mark = new MarkWidget;
    m_mark->show(MarkShape::HalfDisc, Role::InkSoft);
    m_text = labelOf({}, "body", "copyBarText");
    layout->addWidget(m_mark);
    layout->addWidget(m_text, 1);
    const auto add = [&](const QString& text, const QString& hint, const char* name, Qt::Key key,
                         void (CopyBar::*asked)()) {
        QPushButton* button = buttonOf(text, name);
        button->setToolTip(hint);
        pressOnControl(key, button);
        button->setAutoDefault(true);
        connect(button, &QPushButton::clicked, this, asked);
        layout->addWidget(button);
    };
    add(CopyWords::bringBack(), CopyWords::bringBackHint(), "bringBackLooked", Qt::Key_B,
        &CopyBar::bringBackAsked);
    add(CopyWords::backToFile(), CopyWords::backToFileHint(), "leaveCopy", Qt::Key_W, &CopyBar::backAsked);
    hide();
}

void CopyBar::display(const QString& sentence)
{
    m_text->setText(sentence);
    setAccessibleName(sentence);
    show();
}

void CopyBar::setLook(const Look& look)
{
    m_mark->setLook(look);
}

} // namespace rig
