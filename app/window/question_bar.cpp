#include "app/window/question_bar.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/plain_tip.h"
#include "app/wording/formats.h"
#include "app/wording/question_words.h"

#include <QEvent>
#include <QHBoxLayout>

#include <algorithm>

namespace rig {

QuestionBar::QuestionBar(QWidget* parent) : QFrame{parent}
{
    setProperty("questions", true);
    setObjectName("questionBar");
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(20, 4, 16, 4);
    layout->setSpacing(10);
    m_mark = new MarkWidget;
    m_text = labelOf({}, "body", "questionBarText");
    m_text->setWordWrap(false);
    m_text->installEventFilter(this);
    m_text->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_show = buttonOf(QuestionWords::show(), "showQuestions");
    m_show->setAutoDefault(true);
    layout->addWidget(m_mark);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_show);
    connect(m_show, &QPushButton::clicked, this, [this] {
        if (m_onPage)
            emit leaveAsked();
        else
            emit showAsked();
    });
    setOnPage(false);
    hide();
}

void QuestionBar::display(const QString& registration, const std::vector<OpenQuestion>& open, bool blind)
{
    if (open.empty())
        return hide();
    const auto shortly = [](const OpenQuestion& one) {
        return QuestionWords::asked(one.kind, QString::fromStdString(one.place));
    };
    QStringList asked;
    for (const OpenQuestion& one : open)
        asked << QuestionWords::askedSince(shortly(one), Formats{}.day(one.since));
    m_sentences = QuestionWords::barSentences(registration, asked, shortly(open.front()));
    if (blind)
        m_sentences = {QuestionWords::barWhileBlind(registration, static_cast<int>(open.size())),
                       m_sentences.back()};
    const bool isOutside = std::ranges::any_of(
        open, [](const OpenQuestion& one) { return one.kind == QuestionKind::OutsideReading; });
    const QuestionKind gravest =
        isOutside && !blind ? QuestionKind::OutsideReading : QuestionKind::SurfaceDoubt;
    m_mark->show(shapeOf(gravest), shapeRoleOf(gravest));
    m_text->setToolTip(plainTip(m_sentences.front()));
    setAccessibleName(m_sentences.front());
    show();
    fit();
}

void QuestionBar::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void QuestionBar::setOnPage(bool onPage)
{
    m_onPage = onPage;
    m_show->setText(onPage ? QuestionWords::leave() : QuestionWords::show());
    m_show->setToolTip(onPage ? QuestionWords::leaveHint() : QuestionWords::showWithKey());
}

bool QuestionBar::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange)
        fit();
    return QFrame::eventFilter(watched, event);
}

// The first sentence that fits; the last one is short enough for the smallest window.
void QuestionBar::fit()
{
    if (m_sentences.isEmpty())
        return;
    const QFontMetrics metrics{m_text->font()};
    const auto fits = std::ranges::find_if(m_sentences, [&](const QString& sentence) {
        return metrics.horizontalAdvance(sentence) < m_text->width();
    });
    m_text->setText(fits == m_sentences.end() ? m_sentences.back() : *fits);
}

} // namespace rig
