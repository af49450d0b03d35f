#include "app/window/marked_bar.h"

#include "app/widgets/announcer.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStyle>

namespace rig {

MarkedBar::MarkedBar(const char* name, Tone tone, QWidget* parent) : QFrame{parent}
{
    setObjectName(QLatin1String{name});
    m_layout = new QHBoxLayout{this};
    m_layout->setContentsMargins(20, 4, 16, 4);
    m_layout->setSpacing(10);
    m_mark = new MarkWidget;
    m_text = labelOf({}, "body");
    m_text->setObjectName(QLatin1String{name} + QLatin1String{"Text"});
    m_layout->addWidget(m_mark);
    m_layout->addWidget(m_text, 1);
    setTone(tone);
    hide();
}

void MarkedBar::setTone(Tone tone)
{
    if (m_tone == tone)
        return;
    m_tone = tone;
    const bool isProblem = tone == Tone::Problem;
    setProperty("banner", isProblem);
    setProperty("questions", !isProblem);
    m_text->setProperty("kind", isProblem ? "problem" : "body");
    for (QWidget* part :
         {static_cast<QWidget*>(this), static_cast<QWidget*>(m_text)}) { // what it is looked up by
        part->style()->unpolish(part);
        part->style()->polish(part);
    }
}

void MarkedBar::say(const QString& sentence)
{
    m_text->setText(sentence);
    setAccessibleName(sentence);
    setVisible(!sentence.isEmpty());
    announce(*this, sentence);
}

void MarkedBar::mark(MarkShape shape, Role role)
{
    m_mark->show(shape, role);
}

void MarkedBar::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void MarkedBar::add(QPushButton* button)
{
    button->setAutoDefault(true);
    m_layout->addWidget(button);
}

AsideBar::AsideBar(const char* name, Tone tone, const char* button, Words words, QWidget* parent)
    : MarkedBar{name, tone, parent}, m_words{std::move(words)}
{
    m_button = buttonOf({}, button);
    add(m_button);
    connect(m_button, &QPushButton::clicked, this, [this] {
        if (m_isOnPage)
            emit leaveAsked();
        else
            emit showAsked();
    });
    setOnPage(false);
}

void AsideBar::setOnPage(bool isOnPage)
{
    m_isOnPage = isOnPage;
    m_button->setText(isOnPage ? m_words.leave : m_words.show);
    m_button->setToolTip(isOnPage ? m_words.leaveHint : m_words.showHint);
}

} // namespace rig
