#include "app/pages/setup/baseline_cycle_card.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/gap_strip_widget.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/question_tile.h"
#include "app/wording/baseline_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <cmath>

namespace rig {

namespace {

QString cycleText(const std::string& text)
{
    return QString::fromStdString(text);
}

const BaselineGaugeRow* gaugeIn(const BaselineDayView& view, std::optional<GaugeId> id)
{
    for (const BaselineGaugeRow& row : view.gauges)
        if (row.gauge.id == id)
            return &row;
    return nullptr;
}

const BaselineReadingRow* rowIn(const BaselineSheet& sheet, const std::optional<Correction>& correction)
{
    for (const BaselineReadingRow& row : sheet.readings)
        if (correction && row.reading.id == correction->of)
            return &row;
    return nullptr;
}

// What still has to be chosen before a cycle can begin; empty when nothing lacks.
QString lackOf(const BaselineDayView& view, const BaselineSheet& sheet, const BaselineWork& work)
{
    if (!sheet.fitting)
        return BaselineWords::noFitting();
    if (!work.person)
        return BaselineWords::choosePersonFirst();
    const BaselineGaugeRow* gauge = gaugeIn(view, work.gauge);
    if (!gauge)
        return BaselineWords::chooseGaugeFirst();
    return gauge->inDoubt ? BaselineWords::gaugeInDoubtFirst() : QString{};
}

// Where the cycle stands, in words.
QString stepOf(const BaselineWork& work)
{
    if (work.cycle.reconnected == false)
        return BaselineWords::notReconnected();
    if (work.cycle.locked == false)
        return BaselineWords::notLocked();
    if (work.cycle.mayRead())
        return BaselineWords::readNow();
    if (work.cycle.reconnected == true)
        return BaselineWords::confirmFirst();
    return work.personChanged ? BaselineWords::personChanged() : BaselineWords::answerFirst();
}

std::optional<Answer> answerOf(std::optional<bool> yes)
{
    if (!yes)
        return std::nullopt;
    return *yes ? Answer::Yes : Answer::No;
}

} // namespace

BaselineCycleCard::BaselineCycleCard(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 14, 16, 14);
    layout->setSpacing(10);
    buildTop(layout);
    buildTiles(layout);
    buildReading(layout);
}

void BaselineCycleCard::buildTop(QVBoxLayout* layout)
{
    m_title = labelOf({}, "section", "baselineCoupling");
    m_access = labelOf({}, "soft");
    layout->addWidget(m_title);
    layout->addWidget(m_access);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    const auto choice = [row](const QString& text, const char* name) {
        auto* column = new QVBoxLayout;
        column->setSpacing(2);
        auto* box = new ChoiceBox{text};
        box->setObjectName(QLatin1String(name));
        QLabel* label = labelOf(text, "label");
        label->setBuddy(box);
        column->addWidget(label);
        column->addWidget(box);
        row->addLayout(column, 1);
        return box;
    };
    m_person = choice(BaselineWords::measuredBy(), "baselinePerson");
    m_gauge = choice(BaselineWords::measuredWith(), "baselineGauge");
    connect(m_person, &QComboBox::activated, this,
            [this] { emit personChosen(m_person->chosen<PersonId>()); });
    connect(m_gauge, &QComboBox::activated, this, [this] { emit gaugeChosen(m_gauge->chosen<GaugeId>()); });
    layout->addLayout(row);
}

void BaselineCycleCard::buildTiles(QVBoxLayout* layout)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    m_reconnected = new QuestionTile{BaselineWords::reconnected(), BaselineWords::reconnectedHint(), false};
    m_reconnected->setObjectName("tileReconnected");
    m_locked = new QuestionTile{BaselineWords::locked(), BaselineWords::lockedHint(), false};
    m_locked->setObjectName("tileLocked");
    connect(m_reconnected, &QuestionTile::answered, this,
            [this](Answer answer) { emit reconnectedAnswered(answer == Answer::Yes); });
    connect(m_locked, &QuestionTile::answered, this,
            [this](Answer answer) { emit lockedAnswered(answer == Answer::Yes); });
    row->addWidget(m_reconnected, 1);
    row->addWidget(m_locked, 1);
    layout->addLayout(row);
    m_notice = labelOf({}, "caution", "baselineNotice");
    layout->addWidget(m_notice);
    m_drop = buttonOf(BaselineWords::dropCorrection(), "dropCorrection");
    connect(m_drop, &QPushButton::clicked, this, &BaselineCycleCard::correctionDropped);
    layout->addWidget(m_drop, 0, Qt::AlignLeft);
}

void BaselineCycleCard::buildReading(QVBoxLayout* layout)
{
    m_leaves = new LeafRow;
    m_leaves->setObjectName("baselineLeaves");
    layout->addWidget(m_leaves);
    m_refused = labelOf({}, "problem", "baselineRefused");
    layout->addWidget(m_refused);
    m_kept = labelOf({}, "label", "baselineKept");
    layout->addWidget(m_kept);
    m_strip = new GapStripWidget;
    m_strip->setObjectName("baselineStrip");
    layout->addWidget(m_strip);
    m_numbers = labelOf({}, "body", "baselineNumbers");
    layout->addWidget(m_numbers);
    connect(m_leaves, &LeafRow::readingChosen, this, &BaselineCycleCard::readingChosen);
    connect(m_leaves, &LeafRow::entryRefused, this,
            [this](const QString& sentence) { sayIn(m_refused, sentence); });
}

void BaselineCycleCard::setLook(const Look& look)
{
    m_leaves->setLook(look);
    m_strip->setLook(look);
    m_strip->setFixedHeight(static_cast<int>(std::lround(92 * look.fonts.scale)));
}

void BaselineCycleCard::display(const BaselineDayView& view, const BaselineSheet& sheet,
                                const BaselineWork& work)
{
    m_title->setText(cycleText(sheet.coupling.name));
    const QString access = cycleText(sheet.coupling.access);
    const QString leaf = cycleText(sheet.coupling.leafPlace);
    sayIn(m_access,
          access.isEmpty() || leaf.isEmpty() ? access + leaf : access + QStringLiteral(" · ") + leaf);
    fillChoices(view, work);
    const QString lack = lackOf(view, sheet, work);
    const bool open = lack.isEmpty() && !sheet.frozen;
    showTiles(work, open && !work.correction);
    const BaselineReadingRow* wrong = rowIn(sheet, work.correction);
    const Formats formats;
    if (sheet.frozen)
        sayIn(m_notice, BaselineWords::frozenStays());
    else if (wrong)
        sayIn(m_notice,
              BaselineWords::correctNow(formats.interval(wrong->reading.interval),
                                        formats.moment(wrong->reading.when), cycleText(wrong->person)));
    else
        sayIn(m_notice, lack.isEmpty() ? stepOf(work) : lack);
    m_drop->setVisible(wrong);
    showLeaves(view, sheet, work);
    sayIn(m_refused, {});
    sayIn(m_kept, work.kept);
    showStrip(sheet);
    showNumbers(sheet);
}

void BaselineCycleCard::fillChoices(const BaselineDayView& view, const BaselineWork& work)
{
    m_person->begin(BaselineWords::choosePerson());
    for (const Person& person : view.persons)
        m_person->add(cycleText(person.name), person.id);
    m_person->choose(work.person);
    m_gauge->begin(BaselineWords::chooseGauge());
    for (const BaselineGaugeRow& row : view.gauges) {
        const QString name = cycleText(row.gauge.name);
        m_gauge->add(row.inDoubt ? BaselineWords::gaugeInDoubt(name) : name, row.gauge.id);
    }
    m_gauge->choose(work.gauge);
}

void BaselineCycleCard::showTiles(const BaselineWork& work, bool open)
{
    using Ask = BaselineCycle::Ask;
    m_asked = open ? work.cycle.ask() : Ask::Nothing;
    m_reconnected->setAnswer(answerOf(work.cycle.reconnected));
    m_reconnected->setState(m_asked == Ask::Reconnected, open);
    m_locked->setAnswer(answerOf(work.cycle.locked));
    m_locked->setState(m_asked == Ask::Locked, open && work.cycle.reconnected == true);
}

void BaselineCycleCard::showLeaves(const BaselineDayView& view, const BaselineSheet& sheet,
                                   const BaselineWork& work)
{
    const BaselineReadingRow* wrong = rowIn(sheet, work.correction);
    const BaselineGaugeRow* gauge =
        gaugeIn(view, wrong && wrong->reading.gauge ? wrong->reading.gauge : work.gauge);
    std::optional<Gap> centre;
    if (sheet.band)
        centre = Gap::micrometres(static_cast<std::int32_t>(std::lround(sheet.band->median * 1000)));
    else if (!sheet.readings.empty())
        centre = sheet.readings.front().reading.interval.enters;
    m_leaves->setGauge(gauge ? gauge->gauge.set : GaugeSet{}, centre);
    m_leaves->setChosen(wrong ? std::optional{GaugeReading{wrong->reading.interval, wrong->reading.technique}}
                              : std::nullopt);
    const bool open = lackOf(view, sheet, work).isEmpty() && work.cycle.mayRead();
    m_leaves->setEnabled(!sheet.frozen && gauge && (wrong ? work.person.has_value() : open));
}

void BaselineCycleCard::showStrip(const BaselineSheet& sheet)
{
    GapStripView strip;
    strip.band = sheet.band;
    strip.partSeated = sheet.partSeated;
    for (const BaselineReadingRow& row : sheet.readings) {
        if (!row.admitted)
            continue;
        if (strip.reading)
            strip.earlier.push_back(*strip.reading);
        strip.reading = row.reading.interval;
    }
    m_strip->setView(strip);
}

void BaselineCycleCard::showNumbers(const BaselineSheet& sheet)
{
    QStringList says{BaselineWords::sources(sheet.admitted, sheet.people, sheet.gauges, sheet.days)};
    const bool alone = sheet.people < 2 || sheet.gauges < 2 || sheet.days < 2;
    if (alone && sheet.admitted > 0 && !sheet.frozen)
        says << BaselineWords::splitAdvice();
    if (!sheet.band) {
        says << (sheet.admitted < kReadingsForBand
                     ? BaselineWords::noBandYet(sheet.admitted, kReadingsForBand)
                     : BaselineWords::noBandFromThese());
        if (sheet.doubted)
            says << DoubtWords::otherVersion(*sheet.doubted, false);
    } else {
        says << (sheet.band->isThin() ? BaselineWords::thin(sheet.band->readings, kReadingsToFreeze)
                                      : BaselineWords::enough(sheet.band->readings));
        says << BaselineWords::widths(*sheet.band);
        if (sheet.doubted)
            says << DoubtWords::otherVersion(*sheet.doubted, true);
        if (sheet.narrowing)
            says << BaselineWords::narrowing(sheet.narrowing->widthNow, sheet.narrowing->widthWithOneMore);
        says << BaselineWords::outerShare() << BaselineWords::neverALimit();
    }
    m_numbers->setText(says.join(QLatin1Char('\n')));
}

bool BaselineCycleCard::takeKey(QKeyEvent* event)
{
    const bool yes = isKey(*event, RiggedWords::keyYes());
    if (yes || isKey(*event, RiggedWords::keyNo())) {
        if (m_asked == BaselineCycle::Ask::Nothing)
            return false;
        if (m_asked == BaselineCycle::Ask::Reconnected)
            emit reconnectedAnswered(yes);
        else
            emit lockedAnswered(yes);
        return true;
    }
    if (event->key() == Qt::Key_Escape && !m_drop->isHidden())
        return m_drop->click(), true;
    return m_leaves->takeKey(event);
}

} // namespace rig
