#include "app/pages/setup/demonstration_card.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/gap_strip_widget.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/wording/baseline_words.h"
#include "app/wording/demonstration_words.h"
#include "app/wording/formats.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QVBoxLayout>

#include <cmath>

namespace rig {

namespace {

QString cardText(const std::string& text)
{
    return QString::fromStdString(text);
}

const BaselineGaugeRow* gaugeShown(const BaselineDayView& view, std::optional<GaugeId> id)
{
    for (const BaselineGaugeRow& row : view.gauges)
        if (row.gauge.id == id)
            return &row;
    return nullptr;
}

const BaselineReadingRow* rowShown(const DemonstrationSheet& sheet,
                                   const std::optional<Correction>& correction)
{
    for (const BaselineReadingRow& row : sheet.readings)
        if (correction && row.reading.id == correction->of)
            return &row;
    return nullptr;
}

// What still has to be done before a reading is taken; empty when nothing lacks.
QString lackIn(const BaselineDayView& view, const DemonstrationSheet& sheet, const DemonstrationWork& work)
{
    if (!sheet.fitting)
        return BaselineWords::noFitting();
    if (!work.allCautions())
        return DemonstrationWords::cautionsFirst();
    if (!work.owner)
        return DemonstrationWords::ownerFirst();
    if (!work.second || work.second == work.owner)
        return DemonstrationWords::secondFirst();
    const BaselineGaugeRow* gauge = gaugeShown(view, work.gauge);
    if (!gauge)
        return BaselineWords::chooseGaugeFirst();
    return gauge->inDoubt ? DemonstrationWords::gaugeInDoubt() : QString{};
}

} // namespace

DemonstrationCard::DemonstrationCard(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 14, 16, 14);
    layout->setSpacing(10);
    m_title = labelOf({}, "section", "demonstrationCoupling");
    layout->addWidget(m_title);
    buildCautions(layout);
    buildChoices(layout);
    buildReading(layout);
}

void DemonstrationCard::buildCautions(QVBoxLayout* layout)
{
    layout->addWidget(labelOf(DemonstrationWords::cautionsHeading(), "label"));
    m_rigged = labelOf(DemonstrationWords::riggedToday(), "problem", "riggedToday");
    layout->addWidget(m_rigged);
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
        layout->addLayout(row);
        connect(tick, &QCheckBox::clicked, this,
                [this, i](bool ticked) { emit cautionTicked(static_cast<int>(i), ticked); });
        m_cautions[i] = tick;
    }
    layout->addWidget(labelOf(DemonstrationWords::support(), "soft"));
}

void DemonstrationCard::buildChoices(QVBoxLayout* layout)
{
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(2);
    int at = 0; // two people side by side, the gauge below them
    const auto choice = [&](const QString& text, const char* name) {
        auto* box = new ChoiceBox{text};
        box->setObjectName(QLatin1String(name));
        QLabel* label = labelOf(text, "label");
        label->setBuddy(box);
        const int line = at / 2 * 2;
        grid->addWidget(label, line, at % 2, Qt::AlignBottom);
        grid->addWidget(box, line + 1, at % 2);
        grid->setColumnStretch(at % 2, 1);
        ++at;
        return box;
    };
    m_owner = choice(DemonstrationWords::owner(), "demonstrationOwner");
    m_second = choice(DemonstrationWords::second(), "demonstrationSecond");
    m_gauge = choice(BaselineWords::measuredWith(), "demonstrationGauge");
    connect(m_owner, &QComboBox::activated, this, [this] { emit ownerChosen(m_owner->chosen<PersonId>()); });
    connect(m_second, &QComboBox::activated, this,
            [this] { emit secondChosen(m_second->chosen<PersonId>()); });
    connect(m_gauge, &QComboBox::activated, this, [this] { emit gaugeChosen(m_gauge->chosen<GaugeId>()); });
    layout->addLayout(grid);
}

void DemonstrationCard::buildReading(QVBoxLayout* layout)
{
    m_notice = labelOf({}, "caution", "demonstrationNotice");
    layout->addWidget(m_notice);
    m_drop = buttonOf(BaselineWords::dropCorrection(), "dropCorrection");
    connect(m_drop, &QPushButton::clicked, this, &DemonstrationCard::correctionDropped);
    layout->addWidget(m_drop, 0, Qt::AlignLeft);
    m_leaves = new LeafRow;
    m_leaves->setObjectName("demonstrationLeaves");
    layout->addWidget(m_leaves);
    m_refused = labelOf({}, "problem", "demonstrationRefused");
    layout->addWidget(m_refused);
    m_kept = labelOf({}, "label", "demonstrationKept");
    layout->addWidget(m_kept);
    m_strip = new GapStripWidget;
    m_strip->setObjectName("demonstrationStrip");
    layout->addWidget(m_strip);
    m_numbers = labelOf({}, "body", "demonstrationNumbers");
    layout->addWidget(m_numbers);
    layout->addWidget(labelOf(DemonstrationWords::afterwards(), "caution", "afterwards"));
    connect(m_leaves, &LeafRow::readingChosen, this, &DemonstrationCard::readingChosen);
    connect(m_leaves, &LeafRow::entryRefused, this,
            [this](const QString& sentence) { sayIn(m_refused, sentence); });
}

void DemonstrationCard::setLook(const Look& look)
{
    m_leaves->setLook(look);
    m_strip->setLook(look);
    m_strip->setFixedHeight(static_cast<int>(std::lround(92 * look.fonts.scale)));
}

void DemonstrationCard::dropTyped()
{
    m_leaves->clearTyped();
}

void DemonstrationCard::display(const BaselineDayView& view, const DemonstrationSheet& sheet,
                                const DemonstrationWork& work)
{
    m_title->setText(cardText(sheet.coupling.name));
    m_rigged->setVisible(sheet.riggedToday);
    for (std::size_t i = 0; i < m_cautions.size(); ++i)
        m_cautions[i]->setChecked(work.cautions[i]);
    fillChoices(view, work);
    const BaselineReadingRow* wrong = rowShown(sheet, work.correction);
    const Formats formats;
    const QString lack = lackIn(view, sheet, work);
    if (wrong && lack.isEmpty())
        sayIn(m_notice,
              BaselineWords::correctNow(formats.interval(wrong->reading.interval),
                                        formats.moment(wrong->reading.when), cardText(wrong->person)));
    else
        sayIn(m_notice, lack.isEmpty() ? DemonstrationWords::readNow() : lack);
    m_drop->setVisible(wrong);
    showLeaves(view, sheet, work, lack.isEmpty());
    sayIn(m_refused, {});
    sayIn(m_kept, work.kept);
    GapStripView strip;
    strip.band = sheet.band;
    strip.partSeated = sheet.partSeated;
    m_strip->setView(strip);
    showNumbers(sheet);
}

void DemonstrationCard::fillChoices(const BaselineDayView& view, const DemonstrationWork& work)
{
    m_owner->begin(BaselineWords::choosePerson());
    m_second->begin(BaselineWords::choosePerson());
    for (const Person& person : view.persons) {
        m_owner->add(cardText(person.name), person.id);
        if (person.id != work.owner)
            m_second->add(cardText(person.name), person.id);
    }
    m_owner->choose(work.owner);
    m_second->choose(work.second);
    m_gauge->begin(BaselineWords::chooseGauge());
    for (const BaselineGaugeRow& row : view.gauges) {
        const QString name = cardText(row.gauge.name);
        m_gauge->add(row.inDoubt ? BaselineWords::gaugeInDoubt(name) : name, row.gauge.id);
    }
    m_gauge->choose(work.gauge);
}

void DemonstrationCard::showLeaves(const BaselineDayView& view, const DemonstrationSheet& sheet,
                                   const DemonstrationWork& work, bool open)
{
    const BaselineReadingRow* wrong = rowShown(sheet, work.correction);
    const BaselineGaugeRow* gauge = gaugeShown(view, work.gauge);
    std::optional<Gap> centre;
    if (!sheet.partSeated.empty())
        centre = sheet.partSeated.back().enters;
    else if (sheet.band)
        centre = Gap::micrometres(static_cast<std::int32_t>(std::lround(sheet.band->median * 1000)));
    m_leaves->setGauge(gauge ? gauge->gauge.set : GaugeSet{}, centre);
    m_leaves->setChosen(wrong ? std::optional{GaugeReading{wrong->reading.interval, wrong->reading.technique}}
                              : std::nullopt);
    m_leaves->setEnabled(open);
}

void DemonstrationCard::showNumbers(const DemonstrationSheet& sheet)
{
    QStringList says;
    if (sheet.partSeated.empty())
        says << DemonstrationWords::nothingSeen();
    else
        says << DemonstrationWords::seen(static_cast<int>(sheet.partSeated.size()))
             << DemonstrationWords::witness(sheet.witness);
    says << DemonstrationWords::apart();
    says.removeAll(QString{});
    m_numbers->setText(says.join(QLatin1Char('\n')));
}

bool DemonstrationCard::takeKey(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && !m_drop->isHidden())
        return m_drop->click(), true;
    return m_leaves->takeKey(event);
}

} // namespace rig
