#include "app/window/question_bar.h"

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
    mark(shapeOf(gravest), shapeRoleOf(gravest));
    text().setToolTip(plainTip(m_sentences.front()));
    setAccessibleName(m_sentences.front());
    show();
    fit();
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
