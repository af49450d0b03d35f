#include "app/window/question_bar.h"

#include "app/widgets/announcer.h"
#include "app/widgets/plain_tip.h"
#include "app/wording/formats.h"
#include "app/wording/question_words.h"

#include <QEvent>
#include <QLabel>

#include <algorithm>

namespace rig {

QuestionBar::QuestionBar(QWidget* parent)
    : AsideBar{"questionBar",
               Tone::Caution,
               "showQuestions",
               {QuestionWords::show(), QuestionWords::showWithKey(), QuestionWords::leave(),
                QuestionWords::leaveHint()},
               parent}
{
    text().setWordWrap(false);
    text().installEventFilter(this);
    text().setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

void QuestionBar::display(const QString& registration, const std::vector<OpenQuestion>& open)
{
    if (open.empty()) {
        announce(*this, {});
        return hide();
    }
    const auto shortly = [](const OpenQuestion& one) {
        return QuestionWords::asked(one.question, QString::fromStdString(one.place));
    };
    QStringList asked;
    for (const OpenQuestion& one : open)
        asked << QuestionWords::askedSince(shortly(one), Formats{}.day(one.question.day()));
    m_sentences = QuestionWords::barSentences(registration, asked, shortly(open.front()));
    const auto stop =
        std::ranges::find_if(open, [](const OpenQuestion& one) { return one.question.isStop(); });
    const Question& gravest = stop == open.end() ? open.front().question : stop->question;
    mark(shapeOf(gravest), shapeRoleOf(gravest));
    text().setToolTip(plainTip(m_sentences.front()));
    setAccessibleName(m_sentences.front());
    show();
    fit();
    announce(*this, m_sentences.front());
}

bool QuestionBar::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange)
        fit();
    return AsideBar::eventFilter(watched, event);
}

// The first sentence that fits; the last one is short enough for the smallest window.
void QuestionBar::fit()
{
    if (m_sentences.isEmpty())
        return;
    const QFontMetrics metrics{text().font()};
    const auto fits = std::ranges::find_if(m_sentences, [&](const QString& sentence) {
        return metrics.horizontalAdvance(sentence) < text().width();
    });
    text().setText(fits == m_sentences.end() ? m_sentences.back() : *fits);
}

} // namespace rig
