#include "app/pages/setup/demonstration_panel.h"

#include "app/pages/setup/baseline_readings.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/setup_entries.h"
#include "app/pages/setup/things_kept.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/demonstration_words.h"
#include "app/wording/witness_words.h"

#include <QCheckBox>
#include <QHBoxLayout>

#include <array>
#include <cmath>

namespace rig {

namespace {

// The cautions, who stands there, and the leaf row of a part-seated joint.
class DemonstrationCard : public ReadingCard
{
public:
    explicit DemonstrationCard(const BenchTools& tools) : ReadingCard{"demonstration", tools}
    {
        buildCautions();
        buildChoices();
        addReading();
        body()->addWidget(labelOf(DemonstrationWords::afterwards(), "caution", "afterwards"));
    }

    QString title() const override { return DemonstrationWords::title(); }
    QString whatFor() const override { return DemonstrationWords::whatFor(); }

    QString detailOf(const BaselineCouplingRow& row) const override
    {
        return row.partSeated > 0 ? DemonstrationWords::shown(row.partSeated)
                                  : DemonstrationWords::neverShown();
    }

    QString lackOfPeople(const std::vector<Person>& persons) const override
    {
        return persons.size() < 2 ? DemonstrationWords::noTwoPeople() : QString{};
    }

    Outcome read(AirframeId airframe, CouplingId coupling) override
    {
        auto read = tools().presenter.demonstration(airframe, coupling, m_work.gauge);
        if (!read)
            return read.problem();
        m_sheet = std::move(read).value();
        return Done{};
    }

    const ReadingSheet* sheet() const override { return m_sheet ? &*m_sheet : nullptr; }
    void close() override { m_sheet.reset(); }

    void forgetEverything() override
    {
        m_second.reset();
        ReadingCard::forgetEverything();
    }

    void leave() override
    {
        for (QCheckBox* caution : m_cautions)
            caution->setChecked(false); // they hold for one sitting
        leaveCoupling();
    }

private:
    void buildCautions()
    {
        body()->addWidget(labelOf(DemonstrationWords::cautionsHeading(), "label"));
        m_rigged = labelOf(DemonstrationWords::riggedToday(), "problem", "riggedToday");
        body()->addWidget(m_rigged);
        const std::array texts{DemonstrationWords::notAFlyingDay(), DemonstrationWords::cockpitTagged(),
                               DemonstrationWords::inspectionAfterwards()};
        for (std::size_t i = 0; i < texts.size(); ++i) {
            // A tick box does not wrap its text, so the sentence stands beside it.
            auto* row = new QHBoxLayout;
            row->setSpacing(6);
            auto* tick = new QCheckBox;
            tick->setObjectName(QStringLiteral("caution%1").arg(i));
            tick->setAccessibleName(texts[i]);
            QLabel* text = labelOf(texts[i], "caution");
            text->setBuddy(tick);
            row->addWidget(tick, 0, Qt::AlignTop);
            row->addWidget(text, 1);
            body()->addLayout(row);
            connect(tick, &QCheckBox::clicked, this, &DemonstrationCard::showAll);
            m_cautions[i] = tick;
        }
        body()->addWidget(labelOf(DemonstrationWords::support(), "soft"));
    }

    void buildChoices()
    {
        auto* choices = new ChoiceGrid; // two people side by side, the gauge below them
        m_owner = choices->add(DemonstrationWords::owner(), "demonstrationOwner");
        m_secondBox = choices->add(DemonstrationWords::second(), "demonstrationSecond");
        ChoiceBox* gauge = addGauges(choices);
        connect(m_owner, &QComboBox::activated, this, [this] {
            m_work.person = m_owner->chosen<PersonId>();
            if (m_second == m_work.person)
                m_second.reset();
            dropTyped();
            showAll();
        });
        connect(m_secondBox, &QComboBox::activated, this, [this] {
            m_second = m_secondBox->chosen<PersonId>();
            showAll();
        });
        connect(gauge, &QComboBox::activated, this, [this, gauge] {
            m_work.gauge = gauge->chosen<GaugeId>();
            emit refreshAsked(); // how far the gap tells the two states apart depends on it
        });
        body()->addLayout(choices);
    }

    void showTop() override
    {
        m_rigged->setVisible(m_sheet->riggedToday);
        fillPeople(m_owner, BaselineWords::choosePerson(), view().persons, m_work.person);
        fillPeople(m_secondBox, BaselineWords::choosePerson(), view().persons, m_second, m_work.person);
    }

    QString lack() const override
    {
        if (!m_sheet->fitting)
            return BaselineWords::noFitting();
        if (!std::ranges::all_of(m_cautions, &QCheckBox::isChecked))
            return DemonstrationWords::cautionsFirst();
        if (!m_work.person)
            return DemonstrationWords::ownerFirst();
        if (!m_second || m_second == m_work.person)
            return DemonstrationWords::secondFirst();
        if (!gauge())
            return BaselineWords::chooseGaugeFirst();
        return gauge()->inDoubt ? DemonstrationWords::gaugeInDoubt() : QString{};
    }

    QString step() const override
    {
        const QString lacking = lack();
        if (!lacking.isEmpty())
            return lacking;
        return wrong() ? correctingNow() : DemonstrationWords::readNow();
    }

    bool mayTake() const override { return lack().isEmpty(); }

    std::optional<Gap> centre() const override
    {
        if (!m_sheet->partSeated.empty())
            return m_sheet->partSeated.back().enters;
        if (m_sheet->band)
            return Gap::micrometres(static_cast<std::int32_t>(std::lround(m_sheet->band->median * 1000)));
        return std::nullopt;
    }

    GapStripView strip() const override
    {
        GapStripView strip;
        strip.band = m_sheet->band;
        strip.partSeated = m_sheet->partSeated;
        return strip;
    }

    QStringList numbers() const override
    {
        QStringList says;
        if (m_sheet->partSeated.empty())
            says << DemonstrationWords::nothingSeen();
        else
            says << WitnessWords::shown(m_sheet->witness) << WitnessWords::level(m_sheet->witness);
        says << DemonstrationWords::apart();
        says.removeAll(QString{});
        return says;
    }

    Result<ReadingId> keep(const GaugeReading& reading) override
    {
        return tools().presenter.keep(*m_sheet, *m_work.person, gauge()->gauge.id, reading, *m_second,
                                      m_work.correction);
    }

    QString keptSentence(const QString& interval, const QString& time, bool) const override
    {
        return DemonstrationWords::kept(interval, time);
    }

    std::optional<DemonstrationSheet> m_sheet;
    std::optional<PersonId> m_second;

    QLabel* m_rigged = nullptr;
    std::array<QCheckBox*, 3> m_cautions{}; // not a flying day, cockpit tagged, inspection afterwards
    ChoiceBox* m_owner = nullptr;
    ChoiceBox* m_secondBox = nullptr;
};

} // namespace

DemonstrationPanel::DemonstrationPanel(Records& records, const Clock& clock, Prompts& prompts,
                                       QWidget* parent)
    : ReadingBench{{{records, clock}, clock, prompts},
                   new DemonstrationCard{{{records, clock}, clock, prompts}},
                   new BaselineReadings{BaselineReadings::Kind::Demonstration},
                   parent}
{
}

} // namespace rig
