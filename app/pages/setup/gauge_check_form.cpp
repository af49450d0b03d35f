#include "app/pages/setup/gauge_check_form.h"

#include "app/widgets/parts.h"
#include "app/wording/day_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/gauge_words.h"

#include <QRadioButton>
#include <QVBoxLayout>

namespace rig {

GaugeCheckForm::GaugeCheckForm() : EntryForm{SetUpWords::saveWithKey(), true}
{
    using Words = GaugeWords;
    using Entry = GaugeCheckEntry;
    setExplanation(Words::checkMeaning());
    DayEdit* checked = day({"checkDay", Words::checkDay(), DayWords::hint(), Field::CheckDay}, &Entry::day);
    line({"checkHow", Words::how(), Words::howHint(), Field::CheckHow}, &Entry::how);
    line({"checkFound", Words::found(), Words::foundHint(), Field::CheckFound}, &Entry::found, Width::Whole);
    line({"knownGap", Words::knownGap(), Words::knownGapHint(), Field::KnownGap}, &Entry::knownGap,
         Width::Whole);
    line({"knownEnters", Words::knownEnters(), {}, Field::KnownEnters}, &Entry::knownEnters);
    line({"knownRefuses", Words::knownRefuses(), {}, Field::KnownRefuses}, &Entry::knownRefuses);
    addWidget(makeOutcome());
    m_from = addDay({"doubtedFrom", Words::doubtedFrom(), {}, Field::DoubtedFrom}, Width::Whole);
    m_effect = makeEffect();
    addWidget(m_effect);
    bind(
        [this](Entry& entry) {
            entry.doubted = m_doubted->isChecked();
            entry.doubtedFrom = entry.doubted ? m_from->text() : QString{};
        },
        [this](const Entry& entry) {
            m_usable->setChecked(!entry.doubted);
            m_doubted->setChecked(entry.doubted);
            m_from->setText(entry.doubtedFrom);
            m_dayGiven = !entry.doubtedFrom.isEmpty();
            setHint(m_from, {});
        });
    connect(m_doubted, &QRadioButton::toggled, this, [this] {
        showDoubt();
        emit edited();
        m_told();
    });
    connect(m_from, &DayEdit::edited, this, [this] { m_dayGiven = true; });
    for (DayEdit* one : {checked, m_from})
        connect(one, &DayEdit::edited, this, [this] { m_told(); });
    showDoubt();
}

QWidget* GaugeCheckForm::makeOutcome()
{
    auto* outcome = new QWidget;
    auto* layout = new QVBoxLayout{outcome};
    layout->setContentsMargins(0, 0, 0, 0);
    m_usable = new QRadioButton{GaugeWords::usable()};
    m_usable->setObjectName("checkUsable");
    m_doubted = new QRadioButton{GaugeWords::doubted()};
    m_doubted->setObjectName("checkDoubted");
    layout->addWidget(m_usable);
    layout->addWidget(m_doubted);
    return outcome;
}

QWidget* GaugeCheckForm::makeEffect()
{
    auto* effect = new QFrame;
    effect->setProperty("card", true);
    auto* layout = new QVBoxLayout{effect};
    layout->setContentsMargins(16, 12, 16, 12);
    layout->setSpacing(6);
    layout->addWidget(labelOf(DoubtWords::effectTitle(), "label"));
    m_effectText = labelOf({}, "body", "doubtEffect");
    m_effectText->setAccessibleName(DoubtWords::effectTitle());
    m_effectText->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    layout->addWidget(m_effectText);
    return effect;
}

void GaugeCheckForm::showDoubt()
{
    setFieldVisible(m_from, m_doubted->isChecked());
    m_effect->setVisible(m_doubted->isChecked());
}

void GaugeCheckForm::proposeDay(const QString& day, const QString& why)
{
    if (!m_dayGiven)
        m_from->setText(day);
    setHint(m_from, why);
    m_from->line()->setAccessibleDescription(why);
}

void GaugeCheckForm::showEffect(const QStringList& sentences)
{
    m_effectText->setText(sentences.join(QLatin1Char('\n')));
    m_effectText->setAccessibleDescription(m_effectText->text());
}

} // namespace rig
