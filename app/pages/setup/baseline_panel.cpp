#include "app/pages/setup/baseline_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/baseline_freeze.h"
#include "app/pages/setup/baseline_readings.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/question_tile.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/baseline_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/rigged_words.h"

#include <cmath>

namespace rig {

namespace {

// One cycle of baseline day: disconnect, clean, connect, confirm locked by other means, read.
struct BaselineCycle
{
    std::optional<bool> reconnected; // disconnected, cleaned, connected again
    std::optional<bool> locked;      // confirmed otherwise than by the gap

    enum class Ask { Reconnected, Locked, Nothing };

    // Not locked means: disconnect and start anew.
    Ask ask() const
    {
        if (reconnected != true || locked == false)
            return Ask::Reconnected;
        return locked ? Ask::Nothing : Ask::Locked;
    }
    bool mayRead() const { return reconnected == true && locked == true; }
};

std::optional<Answer> answerTo(std::optional<bool> yes)
{
    if (!yes)
        return std::nullopt;
    return *yes ? Answer::Yes : Answer::No;
}

// One cycle at one coupling: who, with what, the two confirmations, the leaf row, and the band so far.
class BaselineCard : public ReadingCard
{
public:
    explicit BaselineCard(const BenchTools& tools) : ReadingCard{"baseline", tools}
    {
        buildTop();
        buildTiles();
        addReading();
        m_freeze = new BaselineFreeze;
        connect(m_freeze, &BaselineFreeze::freezeAsked, this, &BaselineCard::freeze);
    }

    QString title() const override { return BaselineWords::title(); }
    QString whatFor() const override { return BaselineWords::whatFor(); }

    QString detailOf(const BaselineCouplingRow& row) const override
    {
        switch (row.stage) {
        case BaselineStage::NoFitting:
            return BaselineWords::noFittingShort();
        case BaselineStage::Thin:
            return BaselineWords::confirmedThin(row.admitted);
        case BaselineStage::Frozen:
            return BaselineWords::confirmedFrozen(row.admitted);
        case BaselineStage::NoBand:
        case BaselineStage::Enough:
            break;
        }
        return BaselineWords::confirmed(row.admitted);
    }

    QString lackOfPeople(const std::vector<Person>& persons) const override
    {
        return persons.empty() ? BaselineWords::noPeople() : QString{};
    }

    QString correctQuestion(const QString& interval, const QString& time) const override
    {
        return ReadingCard::correctQuestion(interval, time) + QLatin1Char(' ') +
               BaselineWords::readElsewhere();
    }

    QWidget* below() override { return m_freeze; }

    Outcome read(AirframeId airframe, CouplingId coupling) override
    {
        auto read = tools().presenter.sheet(airframe, coupling);
        if (!read)
            return read.problem();
        m_sheet = std::move(read).value();
        return Done{};
    }

    const ReadingSheet* sheet() const override { return m_sheet ? &*m_sheet : nullptr; }
    bool isFrozen() const override { return m_sheet->frozen.has_value(); }
    void close() override { m_sheet.reset(); }

    std::optional<CouplingId> begin(const BaselineDayView& view) override
    {
        if (!m_work.gauge)
            m_work.gauge = view.onlyGauge;
        return view.firstCoupling;
    }

    void leaveCoupling() override
    {
        m_cycle = {};
        m_personChanged = false;
        ReadingCard::leaveCoupling();
    }

    bool takeKey(QKeyEvent* event) override
    {
        const bool yes = isKey(*event, RiggedWords::keyYes());
        if ((yes || isKey(*event, RiggedWords::keyNo())) && asked() != BaselineCycle::Ask::Nothing) {
            asked() == BaselineCycle::Ask::Reconnected ? answerReconnected(yes) : answerLocked(yes);
            return true;
        }
        if (ReadingCard::takeKey(event))
            return true;
        return isKey(*event, BaselineWords::keyFreeze()) && (m_freeze->ask(), true);
    }

private:
    void buildTop()
    {
        m_access = labelOf({}, "soft");
        body()->addWidget(m_access);
        auto* choices = new ChoiceGrid;
        m_person = choices->add(BaselineWords::measuredBy(), "baselinePerson");
        ChoiceBox* gauge = addGauges(choices);
        connect(m_person, &QComboBox::activated, this,
                [this] { choosePerson(m_person->chosen<PersonId>()); });
        connect(gauge, &QComboBox::activated, this, [this, gauge] {
            m_work.gauge = gauge->chosen<GaugeId>();
            showAll();
        });
        body()->addLayout(choices);
    }

    void buildTiles()
    {
        auto* row = new WrapLayout{10, true};
        m_reconnected = new QuestionTile{BaselineWords::reconnected(), BaselineWords::reconnectedHint(),
                                         AnswerChoice::YesNo};
        m_reconnected->setObjectName("tileReconnected");
        m_locked =
            new QuestionTile{BaselineWords::locked(), BaselineWords::lockedHint(), AnswerChoice::YesNo};
        m_locked->setObjectName("tileLocked");
        connect(m_reconnected, &QuestionTile::answered, this,
                [this](Answer answer) { answerReconnected(answer == Answer::Yes); });
        connect(m_locked, &QuestionTile::answered, this,
                [this](Answer answer) { answerLocked(answer == Answer::Yes); });
        row->addWidget(m_reconnected);
        row->addWidget(m_locked);
        body()->addLayout(row);
    }

    void choosePerson(std::optional<PersonId> person)
    {
        // Whoever reads has confirmed it too: another person starts the cycle anew.
        m_personChanged = m_work.person && m_work.person != person && m_cycle.reconnected.has_value();
        if (m_work.person != person) {
            m_cycle = {};
            dropTyped();
        }
        m_work.person = person;
        showAll();
    }

    void answerReconnected(bool yes)
    {
        m_cycle = {yes, std::nullopt};
        m_work.kept.clear();
        m_personChanged = false;
        showAll();
    }

    void answerLocked(bool yes)
    {
        m_cycle.locked = yes;
        showAll();
    }

    bool isOpen() const { return lack().isEmpty() && !isFrozen(); }

    BaselineCycle::Ask asked() const
    {
        return m_sheet && isOpen() && !m_work.correction ? m_cycle.ask() : BaselineCycle::Ask::Nothing;
    }

    void showTop() override
    {
        const QString access = shown(m_sheet->coupling.access);
        const QString leaf = shown(m_sheet->coupling.leafPlace);
        sayIn(m_access,
              access.isEmpty() || leaf.isEmpty() ? access + leaf : access + QStringLiteral(" · ") + leaf);
        fillPeople(m_person, BaselineWords::choosePerson(), view().persons, m_work.person);
        const bool open = isOpen() && !m_work.correction;
        m_reconnected->setAnswer(answerTo(m_cycle.reconnected));
        m_reconnected->setState(asked() == BaselineCycle::Ask::Reconnected, open);
        m_locked->setAnswer(answerTo(m_cycle.locked));
        m_locked->setState(asked() == BaselineCycle::Ask::Locked, open && m_cycle.reconnected == true);
        m_freeze->display(*m_sheet, view().persons);
    }

    QString lack() const override
    {
        if (!m_sheet->fitting)
            return BaselineWords::noFitting();
        if (!m_work.person)
            return BaselineWords::choosePersonFirst();
        if (!gauge())
            return BaselineWords::chooseGaugeFirst();
        return gauge()->inDoubt ? BaselineWords::gaugeInDoubtFirst() : QString{};
    }

    QString step() const override
    {
        if (isFrozen())
            return BaselineWords::frozenStays();
        if (wrong())
            return correctingNow();
        if (const QString lacking = lack(); !lacking.isEmpty())
            return lacking;
        if (m_cycle.reconnected == false)
            return BaselineWords::notReconnected();
        if (m_cycle.locked == false)
            return BaselineWords::notLocked();
        if (m_cycle.mayRead())
            return BaselineWords::readNow();
        if (m_cycle.reconnected == true)
            return BaselineWords::confirmFirst();
        return m_personChanged ? BaselineWords::personChanged() : BaselineWords::answerFirst();
    }

    bool mayTake() const override
    {
        if (isFrozen() || !gauge() || !m_work.person)
            return false;
        return wrong() || (lack().isEmpty() && m_cycle.mayRead());
    }

    std::optional<Gap> centre() const override
    {
        if (m_sheet->band)
            return Gap::micrometres(static_cast<std::int32_t>(std::lround(m_sheet->band->median * 1000)));
        if (!m_sheet->readings.empty())
            return m_sheet->readings.front().reading.interval.enters;
        return std::nullopt;
    }

    GapStripView strip() const override
    {
        GapStripView strip;
        strip.band = m_sheet->band;
        strip.partSeated = m_sheet->partSeated;
        for (const BaselineReadingRow& row : m_sheet->readings) {
            if (!row.admitted)
                continue;
            if (strip.reading)
                strip.earlier.push_back(*strip.reading);
            strip.reading = row.reading.interval;
        }
        return strip;
    }

    QStringList numbers() const override
    {
        using Words = BaselineWords;
        const BaselineSheet& sheet = *m_sheet;
        QStringList says{Words::sources(sheet.admitted, sheet.people, sheet.gauges, sheet.days)};
        const bool alone = sheet.people < 2 || sheet.gauges < 2 || sheet.days < 2;
        if (alone && sheet.admitted > 0 && !sheet.frozen)
            says << Words::splitAdvice();
        if (!sheet.band) {
            says << (sheet.admitted < kReadingsForBand ? Words::noBandYet(sheet.admitted, kReadingsForBand)
                                                       : Words::noBandFromThese());
            if (sheet.doubted)
                says << DoubtWords::otherVersion(*sheet.doubted, false);
            return says;
        }
        says << (sheet.band->isThin() ? Words::thin(sheet.band->readings, kReadingsToFreeze)
                                      : Words::enough(sheet.band->readings));
        says << Words::widths(*sheet.band);
        if (sheet.doubted)
            says << DoubtWords::otherVersion(*sheet.doubted, true);
        if (sheet.narrowing)
            says << Words::narrowing(sheet.narrowing->widthNow, sheet.narrowing->widthWithOneMore);
        return says << Words::outerShare() << Words::neverALimit();
    }

    Result<ReadingId> keep(const GaugeReading& reading) override
    {
        const auto kept =
            tools().presenter.keep(*m_sheet, *m_work.person, gauge()->gauge.id, reading, m_work.correction);
        if (kept && !m_work.correction)
            m_cycle = {};
        return kept;
    }

    QString keptSentence(const QString& interval, const QString& time, bool isCorrection) const override
    {
        return isCorrection ? BaselineWords::corrected(interval, time) : BaselineWords::kept(interval, time);
    }

    void freeze(PersonId first, PersonId second)
    {
        const BaselineSheet asked = *m_sheet; // as it stands here, whatever comes in until it is answered
        const QString question = BaselineWords::freezeQuestion(shown(asked.coupling.name), asked.admitted,
                                                               nameOf(first), nameOf(second));
        if (tools().prompts.confirm(this, BaselineWords::freezeTitle(), question, BaselineWords::freezeYes()))
            report(tools().presenter.freeze(asked, first, second));
    }

    std::optional<BaselineSheet> m_sheet;
    BaselineCycle m_cycle;
    bool m_personChanged = false;

    QLabel* m_access = nullptr;
    ChoiceBox* m_person = nullptr;
    QuestionTile* m_reconnected = nullptr;
    QuestionTile* m_locked = nullptr;
    BaselineFreeze* m_freeze = nullptr;
};

} // namespace

BaselinePanel::BaselinePanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : ReadingBench{{{records, clock}, clock, prompts},
                   new BaselineCard{{{records, clock}, clock, prompts}},
                   new BaselineReadings{BaselineReadings::Kind::Baseline},
                   parent}
{
}

} // namespace rig
