#include "app/pages/setup/gauge_check_form.h"

#include "app/pages/setup/day_edit.h"
#include "app/widgets/parts.h"
#include "app/wording/doubt_words.h"
#include "app/wording/gauge_words.h"
#include "app/wording/setup_words.h"

#include <QLineEdit>
#include <QRadioButton>
#include <QVBoxLayout>

namespace rig {

GaugeCheckForm::GaugeCheckForm(QWidget* parent) : Form{SetUpWords::saveWithKey(), true, parent}
{
    setExplanation(GaugeWords::checkMeaning());
    m_day = addDay({"checkDay", GaugeWords::checkDay(), SetUpWords::dayHint(), Field::CheckDay});
    m_how = addLine({"checkHow", GaugeWords::how(), GaugeWords::howHint(), Field::CheckHow});
    m_found = addLine({"checkFound", GaugeWords::found(), GaugeWords::foundHint(), Field::CheckFound},
                      Width::Whole);
    auto* outcome = new QWidget;
    auto* layout = new QVBoxLayout{outcome};
    layout->setContentsMargins(0, 0, 0, 0);
    m_usable = new QRadioButton{GaugeWords::usable()};
    m_usable->setObjectName("checkUsable");
    m_doubted = new QRadioButton{GaugeWords::doubted()};
    m_doubted->setObjectName("checkDoubted");
    layout->addWidget(m_usable);
    layout->addWidget(m_doubted);
    addWidget(outcome);
    m_from = addDay({"doubtedFrom", GaugeWords::doubtedFrom(), {}, Field::DoubtedFrom}, Width::Whole);
    m_effect = makeEffect();
    addWidget(m_effect);
    connect(m_doubted, &QRadioButton::toggled, this, &GaugeCheckForm::showDoubt);
    connect(m_doubted, &QRadioButton::toggled, this, &Form::edited);
    connect(m_doubted, &QRadioButton::toggled, this, &GaugeCheckForm::doubtEdited);
    connect(m_from, &DayEdit::edited, this, [this] { m_dayGiven = true; });
    for (DayEdit* day : {m_day, m_from})
        connect(day, &DayEdit::edited, this, &GaugeCheckForm::doubtEdited);
    showDoubt();
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

GaugeCheckEntry GaugeCheckForm::entry() const
{
    return {m_day->text(), m_how->text(), m_found->text(), m_doubted->isChecked(),
            m_doubted->isChecked() ? m_from->text() : QString{}};
}

void GaugeCheckForm::setEntry(const GaugeCheckEntry& entry)
{
    m_day->setText(entry.day);
    m_how->setText(entry.how);
    m_found->setText(entry.found);
    m_usable->setChecked(!entry.doubted);
    m_doubted->setChecked(entry.doubted);
    m_from->setText(entry.doubtedFrom);
    m_dayGiven = false;
    setHint(m_from, {});
}

} // namespace rig
