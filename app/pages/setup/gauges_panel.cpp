#include "app/pages/setup/doubt_text.h"
#include "app/pages/setup/gauge_check_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"
#include "app/widgets/parts.h"
#include "app/wording/day_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"
#include "app/wording/gauge_words.h"
#include "app/wording/problem_words.h"
#include "core/day_entry.h"
#include "core/measure/size_list.h"

#include <QLocale>

#include <algorithm>

namespace rig {

namespace {

QChar decimalMark()
{
    return QLocale{}.decimalPoint().front();
}

QString sizesOf(const GaugeSet& set)
{
    const Formats formats;
    if (set.kind() == GaugeKind::Taper)
        return GaugeWords::readTo(formats.gap(set.resolution()));
    return GaugeWords::sizesRead(static_cast<int>(set.sizes().size()), formats.gap(set.sizes().front()),
                                 formats.gap(set.sizes().back()));
}

RowText gaugeText(const GaugeRow& row)
{
    const Formats formats;
    const QString name = shown(row.gauge.name);
    RowText text;
    text.title = GaugeWords::line(row.gauge.inUse ? name : GaugeWords::lineOutOfUse(name),
                                  GaugeWords::kindName(row.gauge.set.kind()));
    if (row.doubtedSince) {
        text.shape = MarkShape::HalfDisc;
        text.role = Role::Unknown;
        text.detail = GaugeWords::doubtedSince(formats.day(*row.doubtedSince));
        return text;
    }
    text.detail =
        GaugeWords::joined(sizesOf(row.gauge.set),
                           row.checks.empty() ? GaugeWords::neverChecked()
                                              : GaugeWords::checkedOn(formats.day(row.checks.front().day)));
    return text;
}

QString checkLine(const GaugeCheck& check)
{
    const Formats formats;
    QString line = GaugeWords::checkLine(formats.day(check.day), shown(check.how), shown(check.found));
    if (check.known)
        line = GaugeWords::checkKnown(line, *check.known);
    return check.quarantineFrom ? GaugeWords::checkDoubts(line, formats.day(*check.quarantineFrom)) : line;
}

// One leaf set, pin set or taper gauge.
class GaugeForm : public EntryForm<GaugeEntry>
{
public:
    GaugeForm() : EntryForm{SetUpWords::saveWithKey(), true}
    {
        using Words = GaugeWords;
        using Entry = GaugeEntry;
        line({"gaugeName", Words::name(), Words::nameHint(), Field::GaugeName}, &Entry::name);
        auto* kind =
            choice({"gaugeKind", Words::kind(), {}, {}}, &Entry::kind, GaugeKind::GoNoGo, Words::kindName);
        m_sizes =
            line({"sizes", Words::sizes(), Words::sizesHint(), Field::Sizes}, &Entry::sizes, Width::Whole);
        m_resolution = line({"resolution", Words::resolution(), Words::resolutionHint(), Field::Resolution},
                            &Entry::resolution, Width::Whole);
        line({"tolerance", Words::tolerance(), Words::toleranceHint(), Field::Tolerance}, &Entry::tolerance);
        line({"gaugeNote", Words::note(), {}, {}}, &Entry::note);
        connect(kind, &QComboBox::currentIndexChanged, this, &GaugeForm::showKind);
        connect(m_sizes, &QLineEdit::textChanged, this, &GaugeForm::echoSizes);
        showKind();
    }

private:
    void showKind()
    {
        const bool taper = entry().kind == GaugeKind::Taper;
        setFieldVisible(m_sizes, !taper);
        setFieldVisible(m_resolution, taper);
    }

    // What was understood, while it is typed: a misread list is seen before it is saved.
    void echoSizes()
    {
        const SizeListEntry typed = parseSizeList(m_sizes->text().toStdString());
        const auto* sizes = std::get_if<std::vector<Gap>>(&typed);
        if (!sizes)
            return setHint(m_sizes, GaugeWords::sizesHint());
        const Formats formats;
        setHint(m_sizes, GaugeWords::sizesRead(static_cast<int>(sizes->size()), formats.gap(sizes->front()),
                                               formats.gap(sizes->back())));
    }

    QLineEdit* m_sizes = nullptr;
    QLineEdit* m_resolution = nullptr;
};

class GaugesPanel : public ListPanel
{
public:
    explicit GaugesPanel(SetUpPresenter& presenter)
        : ListPanel{presenter,
                    {SetUpWords::gaugesPart(), SetUpWords::whyGauges()},
                    {"gauge", GaugeWords::title(), GaugeWords::none()}}
    {
        makeButtons();
        m_checksTitle = labelOf({}, "label");
        m_checks = labelOf({}, "soft", "checks");
        m_checks->setTextInteractionFlags(Qt::TextSelectableByMouse);
        addBelow(m_checksTitle);
        addBelow(m_checks);
        m_form = new GaugeForm;
        m_check = new GaugeCheckForm;
        addForm(m_form, [this] {
            finish(m_form, this->presenter().gauges.save(m_form->entry(), m_form->of<GaugeId>()));
        });
        addForm(m_check, [this] {
            finish(m_check, this->presenter().gauges.save(m_check->entry(), *m_check->of<GaugeId>()));
        });
        m_check->onDoubtEdited([this] { showDoubt(); });
    }

    void display(const SetUpView& view) override
    {
        m_gauges = view.gauges;
        m_today = view.today;
        std::vector<Row> rows;
        for (const GaugeRow& row : m_gauges)
            rows.push_back({row.gauge.id.bytes, shown(row.gauge.name), row.gauge.inUse, gaugeText(row)});
        showRows(std::move(rows));
    }

private:
    void makeButtons()
    {
        const auto change = [this](const Row& row) { open(row.id); };
        auto* use = buttonFor("takeGaugeOutOfUse", GaugeWords::takeOut(), [this](const Row& row) {
            report(presenter().gauges.setInUse(GaugeId{row.id}, !row.inUse));
        });
        setUseButton(use, GaugeWords::takeOut(), GaugeWords::putBack());
        addButtons({buttonFor("changeGauge", SetUpWords::edit(), change),
                    buttonFor("noteCheck", GaugeWords::check(), [this](const Row& row) { openCheck(row); }),
                    use});
        auto* usual = button("usualSet", GaugeWords::addUsual(),
                             [this] { open({}, usualLeafSet(m_gauges, decimalMark())); });
        addButtons({usual, button("addGauge", GaugeWords::add(), [this] { open({}); })});
        onOpened(change);
        beginAt(usual, false);
    }

    void rowChosen() override
    {
        ListPanel::rowChosen();
        const Row* row = chosen();
        m_checksTitle->setVisible(row);
        m_checks->setVisible(row);
        if (!row)
            return;
        m_checksTitle->setText(GaugeWords::checks(row->name));
        QStringList lines;
        for (const GaugeRow& one : m_gauges)
            if (one.gauge.id.bytes == row->id)
                std::ranges::transform(one.checks, std::back_inserter(lines), checkLine);
        m_checks->setText(lines.isEmpty() ? GaugeWords::noChecks() : lines.join(QLatin1Char('\n')));
    }

    void open(std::optional<IdBytes> of, const std::optional<GaugeEntry>& typed = {})
    {
        GaugeEntry entry;
        for (const GaugeRow& row : m_gauges)
            if (of == row.gauge.id.bytes)
                entry = entryOf(row.gauge, decimalMark());
        m_form->setTitle(of ? GaugeWords::changeTitle(entry.name) : GaugeWords::newTitle());
        m_form->open(of, entry, typed);
        show(m_form);
    }

    void openCheck(const Row& row)
    {
        m_outlook.reset();
        m_check->setTitle(GaugeWords::checkTitle(row.name));
        m_check->open(row.id, {shown(dayText(m_today)), {}, {}, false, {}});
        show(m_check);
    }

    void showDoubt()
    {
        const GaugeCheckEntry entry = m_check->entry();
        if (!entry.doubted)
            return;
        if (!m_outlook) {
            auto outlook = presenter().gauges.outlook(*m_check->of<GaugeId>());
            if (!outlook) {
                emit problemArose(ProblemWords::sentence(outlook.problem(), {}));
                return;
            }
            m_outlook = std::move(outlook).value();
        }
        const auto day = readDay(entry.day);
        const Day checked = day && *day <= m_today ? *day : m_today;
        const DoubtProposal proposal = m_outlook->proposal(checked);
        m_check->proposeDay(shown(dayText(proposal.from)), sentenceOf(proposal));
        const auto from = readDay(m_check->entry().doubtedFrom);
        if (!from)
            m_check->showEffect({DoubtWords::effectNeedsDay()});
        else if (*from > checked)
            m_check->showEffect({GaugeWords::afterCheck()});
        else
            m_check->showEffect(sentencesOf(m_outlook->preview(checked, *from)));
    }

    std::vector<GaugeRow> m_gauges;
    Day m_today;
    std::optional<QuarantineOutlook>
        m_outlook; // of the gauge in the check's form, once it is said to be in doubt
    QLabel* m_checksTitle = nullptr;
    QLabel* m_checks = nullptr;
    GaugeForm* m_form = nullptr;
    GaugeCheckForm* m_check = nullptr;
};

} // namespace

SetUpPanel* makeGaugesPanel(SetUpPresenter& presenter)
{
    return new GaugesPanel{presenter};
}

} // namespace rig
