#include "app/pages/learn/measuring_panel.h"

#include "app/pages/learn/labelled.h"
#include "app/widgets/announcer.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrapped.h"
#include "app/wording/formats.h"
#include "app/wording/signing_words.h"
#include "app/wording/study_words.h"
#include "core/airframe/name_in.h"

#include <QCheckBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <ranges>

namespace rig {

MeasuringPanel::MeasuringPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(labelOf(StudyWords::measuringTitle(), "title"));
    layout->addWidget(labelOf(StudyWords::measuringWhat(), "body"));
    m_where = labelOf({}, "section", "measuringWhere");
    layout->addWidget(m_where);
    QLabel* label = labelOf(StudyWords::gauge(), "label");
    m_gauge = new ChoiceBox{withoutMnemonic(StudyWords::gauge())};
    m_gauge->setObjectName("measuringGauge");
    label->setBuddy(m_gauge);
    layout->addWidget(label);
    layout->addWidget(m_gauge, 0, Qt::AlignLeft);
    m_notice = labelOf({}, "caution", "measuringNotice");
    layout->addWidget(m_notice);
    m_leaves = new LeafRow;
    m_leaves->setObjectName("measuringLeaves");
    layout->addWidget(m_leaves);
    m_refused = labelOf({}, "problem", "measuringRefused");
    m_kept = labelOf({}, "label", "measuringKept");
    m_refused->hide();
    m_kept->hide();
    layout->addWidget(m_refused);
    layout->addWidget(m_kept);
    m_show = buttonOf(StudyWords::showOwn(), "measuringShow");
    layout->addWidget(m_show, 0, Qt::AlignLeft);
    m_own = labelOf({}, "body", "measuringOwn");
    layout->addWidget(m_own);
    m_take = new QWidget;
    auto* grid = new QGridLayout{m_take};
    grid->setContentsMargins(0, 0, 0, 0);
    m_takeWhich = new ChoiceBox{withoutMnemonic(SigningWords::toTakeBack())};
    m_takeWhich->setObjectName("takePracticeBackWhich");
    addLabelled(grid, 0, 0, SigningWords::toTakeBack(), m_takeWhich);
    auto* take = buttonOf(SigningWords::takeBack(), "takePracticeBack");
    grid->addWidget(take, 2, 0, Qt::AlignLeft);
    m_takeProblem = labelOf({}, "problem", "takePracticeBackProblem");
    m_takeProblem->hide();
    grid->addWidget(m_takeProblem, 3, 0);
    layout->addWidget(m_take);
    m_takenBack = labelOf({}, "body", "practiceTakenBack");
    m_takenBack->setTextFormat(Qt::RichText); // struck; the rest is escaped
    layout->addWidget(m_takenBack);
    connect(take, &QPushButton::clicked, this, &MeasuringPanel::takeBack);
    m_private = labelOf({}, "soft", "measuringPrivate");
    layout->addWidget(m_private);
    m_share = new WrapCheck{StudyWords::share()};
    m_share->setObjectName("measuringShare");
    layout->addWidget(m_share);
    layout->addStretch(1);
    connect(m_gauge, &QComboBox::activated, this, &MeasuringPanel::showLeaves);
    connect(m_leaves, &LeafRow::readingChosen, this, [this](const GaugeReading& reading) {
        const auto gauge = m_gauge->chosen<GaugeId>();
        if (m_coupling && gauge)
            emit readingTaken(m_view.person, *m_coupling, *gauge, reading);
    });
    connect(m_leaves, &LeafRow::entryRefused, this, [this](const QString& sentence) {
        sayIn(m_refused, m_leaves->says(sentence) ? QString{} : sentence);
    });
    connect(m_show, &QPushButton::clicked, this, [this] {
        m_isShowing = !m_isShowing;
        showOwn();
        showTakenBack();
    });
    connect(m_share, &QCheckBox::toggled, this, [this](bool isOn) { emit shareAsked(m_view.person, isOn); });
}

void MeasuringPanel::setLook(const Look& look)
{
    m_leaves->setLook(look);
}

void MeasuringPanel::display(const MeasuringView& view, const QString& person,
                             std::optional<CouplingId> coupling)
{
    const bool isAnother = m_view.person != view.person;
    if (isAnother) {
        m_isShowing = false;
        m_gauge->setCurrentIndex(0);
    }
    const auto found =
        coupling ? std::ranges::find(view.couplings, *coupling, &Coupling::id) : view.couplings.end();
    const auto here = found == view.couplings.end() ? std::nullopt : std::optional{found->id};
    if (isAnother || here != m_coupling) {
        m_leaves->clearTyped();
        sayIn(m_refused, {});
        sayAloud(m_kept, {});
        sayIn(m_takeProblem, {});
    }
    if (!isAnother && view.readings.size() < m_view.readings.size())
        sayAloud(m_kept, SigningWords::takenBackNow());
    m_view = view;
    m_person = person;
    m_coupling = here;
    m_where->setText(here ? StudyWords::measureAt(QString::fromStdString(found->name)) : StudyWords::noGap());
    const auto gauge = m_gauge->chosen<GaugeId>();
    m_gauge->fill(StudyWords::chooseGauge(), view.gauges);
    m_gauge->choose(gauge);
    m_private->setText(StudyWords::isPrivate(person));
    const QSignalBlocker silent{m_share};
    m_share->setChecked(view.isShared);
    showLeaves();
    showOwn();
    showTakenBack();
}

void MeasuringPanel::showLeaves()
{
    const auto chosen = m_gauge->chosen<GaugeId>();
    const auto gauge = chosen ? std::ranges::find(m_view.gauges, *chosen, &Gauge::id) : m_view.gauges.end();
    const bool mayRead = m_coupling && gauge != m_view.gauges.end();
    m_leaves->setGauge(gauge == m_view.gauges.end() ? GaugeSet{} : gauge->set, std::nullopt);
    m_leaves->setEnabled(mayRead);
    sayIn(m_notice, m_coupling && !mayRead ? StudyWords::chooseGaugeFirst() : QString{});
}

void MeasuringPanel::showOwn()
{
    m_show->setText(m_isShowing ? StudyWords::hideOwn() : StudyWords::showOwn());
    QStringList says;
    const OwnPractice& own = m_view.own;
    if (own.readings == 0)
        says << StudyWords::noneOwn();
    else
        says << StudyWords::ownCount(own.readings);
    if (own.repeatSd)
        says << StudyWords::repeats(*own.repeatSd, *own.repeatSdInterval);
    else if (own.readings > 0)
        says << StudyWords::tooFew();
    if (own.limitedByStep)
        says << StudyWords::limitedByStep();
    if (own.readings > 0)
        says << (own.offset ? StudyWords::offset(*own.offset, *own.offsetInterval) : StudyWords::noOffset());
    sayIn(m_own, m_isShowing ? says.join(QLatin1Char('\n')) : QString{});
}

// What was read is told only while own figures are shown.
QString MeasuringPanel::lineOf(const PracticeReading& reading) const
{
    const Formats formats;
    const QString at = StudyWords::oneReading(
        QString::fromStdString(nameIn(m_view.couplings, reading.coupling)), formats.moment(reading.when));
    return m_isShowing ? StudyWords::oneReading(at, formats.interval(reading.interval)) : at;
}

void MeasuringPanel::showTakenBack()
{
    std::vector<ChoiceBox::Entry> readings;
    for (const PracticeReading& reading : m_view.readings | std::views::reverse)
        readings.push_back(ChoiceBox::entry(lineOf(reading), reading.id));
    const auto which = m_takeWhich->chosen<PracticeReadingId>();
    m_takeWhich->fillWith(StudyWords::chooseReading(), readings);
    m_takeWhich->choose(which);
    m_take->setVisible(!readings.empty());
    QStringList rows;
    for (const auto& [reading, back] : m_view.takenBack)
        rows << SigningWords::takenBack(QStringLiteral("<s>%1</s>").arg(lineOf(reading).toHtmlEscaped()),
                                        m_person.toHtmlEscaped(),
                                        QString::fromStdString(back.reason).toHtmlEscaped());
    sayIn(m_takenBack, rows.join(QStringLiteral("<br>")));
}

void MeasuringPanel::takeBack()
{
    const auto which = m_takeWhich->chosen<PracticeReadingId>();
    const auto found =
        which ? std::ranges::find(m_view.readings, *which, &PracticeReading::id) : m_view.readings.end();
    const bool isThere = found != m_view.readings.end();
    sayIn(m_takeProblem, isThere ? QString{} : SigningWords::toTakeBackMissing());
    if (isThere)
        emit takeBackAsked(*found, lineOf(*found));
    else
        m_takeWhich->setFocus();
}

void MeasuringPanel::showKept()
{
    sayIn(m_refused, {});
    sayAloud(m_kept, StudyWords::kept(m_view.own.readings));
}

bool MeasuringPanel::takeKey(QKeyEvent* event)
{
    return m_leaves->isEnabled() && m_leaves->takeKey(event);
}

} // namespace rig
