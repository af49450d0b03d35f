#include "app/pages/setup/gauges_panel.h"

#include "app/pages/setup/doubt_text.h"
#include "app/pages/setup/gauge_check_form.h"
#include "app/pages/setup/gauge_form.h"
#include "app/pages/setup/panel_parts.h"
#include "app/widgets/row_list.h"
#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"
#include "app/wording/gauge_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"

#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

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

RowText gaugeRowText(const GaugeRow& row)
{
    const Formats formats;
    const QString name = QString::fromStdString(row.gauge.name);
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
    const QString line = GaugeWords::checkLine(formats.day(check.day), QString::fromStdString(check.how),
                                               QString::fromStdString(check.found));
    return check.quarantineFrom ? GaugeWords::checkDoubts(line, formats.day(*check.quarantineFrom)) : line;
}

} // namespace

GaugesPanel::GaugesPanel(SetUpPresenter& presenter, QWidget* parent)
    : SetUpPanel{presenter, SetUpWords::gaugesPart(), SetUpWords::whyGauges(), parent}
{
    m_list = makeList();
    m_form = new GaugeForm;
    m_check = new GaugeCheckForm;
    for (QWidget* one : std::initializer_list<QWidget*>{m_list, m_form, m_check})
        body()->addWidget(one);
    body()->addStretch(1);
    for (Form* form : std::initializer_list<Form*>{m_form, m_check}) {
        connect(form, &Form::closeAsked, this, [this] { show(Shown::List); });
        connect(form, &Form::edited, form, [form] { form->showStatus(SetUpWords::notSavedYet()); });
    }
    connect(m_form, &Form::saveAsked, this, &GaugesPanel::saveGauge);
    connect(m_check, &Form::saveAsked, this, &GaugesPanel::saveCheck);
    connect(m_check, &GaugeCheckForm::doubtEdited, this, &GaugesPanel::showDoubt);
    show(Shown::List);
}

QWidget* GaugesPanel::makeList()
{
    auto* list = new QWidget;
    auto* layout = new QVBoxLayout{list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(GaugeWords::none());
    m_rows = new RowList{"gauge", GaugeWords::title()};
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    auto* change = panelButton("changeGauge", SetUpWords::edit());
    auto* check = panelButton("noteCheck", GaugeWords::check());
    m_use = panelButton("takeGaugeOutOfUse", GaugeWords::takeOut());
    m_usual = panelButton("usualSet", GaugeWords::addUsual());
    auto* add = panelButton("addGauge", GaugeWords::add());
    m_forChosen = {change, check, m_use};
    layout->addWidget(new ButtonFlow{{change, check, m_use}});
    layout->addWidget(new ButtonFlow{{m_usual, add}});
    m_rows->leadTo({change, check, m_use, m_usual, add});
    m_checksTitle = new QLabel;
    m_checksTitle->setProperty("kind", "label");
    m_checks = softLabel({});
    m_checks->setObjectName("checks");
    m_checks->setTextInteractionFlags(Qt::TextSelectableByMouse);
    layout->addSpacing(6);
    layout->addWidget(m_checksTitle);
    layout->addWidget(m_checks);
    connect(m_rows, &RowList::rowChosen, this, [this] { showRows(); });
    connect(m_rows, &RowList::rowOpened, this, &GaugesPanel::openChosen);
    connect(change, &QPushButton::clicked, this, &GaugesPanel::openChosen);
    connect(check, &QPushButton::clicked, this, &GaugesPanel::openCheck);
    connect(m_use, &QPushButton::clicked, this, &GaugesPanel::changeUse);
    connect(m_usual, &QPushButton::clicked, this,
            [this] { open({}, usualLeafSet(m_gauges, decimalMark())); });
    connect(add, &QPushButton::clicked, this, [this] { open({}, {}); });
    return list;
}

void GaugesPanel::display(const SetUpView& view)
{
    m_gauges = view.gauges;
    m_today = view.today;
    showRows();
}

void GaugesPanel::showRows()
{
    std::vector<RowText> rows;
    for (const GaugeRow& row : m_gauges)
        rows.push_back(gaugeRowText(row));
    m_rows->display(rows);
    m_none->setVisible(rows.empty());
    for (QPushButton* button : m_forChosen)
        button->setVisible(!rows.empty());
    setPrimary(m_usual, rows.empty());
    showChecks();
}

void GaugesPanel::showChecks()
{
    const GaugeRow* row = chosen();
    m_checksTitle->setVisible(row);
    m_checks->setVisible(row);
    if (!row)
        return;
    m_use->setText(row->gauge.inUse ? GaugeWords::takeOut() : GaugeWords::putBack());
    m_checksTitle->setText(GaugeWords::checks(QString::fromStdString(row->gauge.name)));
    QStringList lines;
    for (const GaugeCheck& check : row->checks)
        lines.append(checkLine(check));
    m_checks->setText(lines.isEmpty() ? GaugeWords::noChecks() : lines.join(QLatin1Char('\n')));
}

const GaugeRow* GaugesPanel::chosen() const
{
    const int at = m_rows->chosen();
    return at < 0 ? nullptr : &m_gauges[static_cast<std::size_t>(at)];
}

void GaugesPanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

bool GaugesPanel::hasUnsaved() const
{
    return (m_shown == Shown::Gauge && m_form->entry() != m_saved) ||
           (m_shown == Shown::Check && m_check->entry() != m_freshCheck);
}

void GaugesPanel::focusFirst()
{
    switch (m_shown) {
    case Shown::Gauge:
        return m_form->focusFirst();
    case Shown::Check:
        return m_check->focusFirst();
    case Shown::List:
        break;
    }
    if (m_gauges.empty())
        m_usual->setFocus();
    else
        m_rows->focusChosen();
}

void GaugesPanel::show(Shown what)
{
    m_shown = what;
    m_list->setVisible(what == Shown::List);
    m_form->setVisible(what == Shown::Gauge);
    m_check->setVisible(what == Shown::Check);
    if (isVisible())
        focusFirst();
}

void GaugesPanel::open(std::optional<GaugeId> gauge, const GaugeEntry& entry)
{
    m_edited = gauge;
    m_saved = gauge ? entry : GaugeEntry{};
    m_form->setTitle(gauge ? GaugeWords::changeTitle(entry.name) : GaugeWords::newTitle());
    m_form->setEntry(entry);
    m_form->showProblems({});
    m_form->showStatus(entry == m_saved ? QString{} : SetUpWords::notSavedYet());
    show(Shown::Gauge);
}

void GaugesPanel::openChosen()
{
    if (const GaugeRow* row = chosen())
        open(row->gauge.id, entryOf(row->gauge, decimalMark()));
}

void GaugesPanel::openCheck()
{
    const GaugeRow* row = chosen();
    if (!row)
        return;
    m_checked = row->gauge.id;
    m_outlook.reset();
    m_freshCheck = {QString::fromStdString(dayText(m_today)), {}, {}, false, {}};
    m_check->setTitle(GaugeWords::checkTitle(QString::fromStdString(row->gauge.name)));
    m_check->setEntry(m_freshCheck);
    m_check->showProblems({});
    m_check->showStatus({});
    show(Shown::Check);
}

void GaugesPanel::showDoubt()
{
    const GaugeCheckEntry entry = m_check->entry();
    if (!entry.doubted)
        return;
    if (!m_outlook) {
        auto outlook = presenter().outlook(m_checked);
        if (!outlook) {
            emit problemArose(ProblemWords::sentence(outlook.problem(), {}));
            return;
        }
        m_outlook = std::move(outlook).value();
    }
    const auto day = parseDay(entry.day.trimmed().toStdString());
    const Day checked = day && *day <= m_today ? *day : m_today;
    const DoubtProposal proposal = m_outlook->proposal(checked);
    m_check->proposeDay(QString::fromStdString(dayText(proposal.from)), sentenceOf(proposal));
    const auto from = parseDay(m_check->entry().doubtedFrom.trimmed().toStdString());
    if (!from)
        m_check->showEffect({DoubtWords::effectNeedsDay()});
    else if (*from > checked)
        m_check->showEffect({GaugeWords::afterCheck()});
    else
        m_check->showEffect(sentencesOf(m_outlook->preview(checked, *from)));
}

void GaugesPanel::saveGauge()
{
    const auto result = presenter().save(m_form->entry(), m_edited);
    if (result)
        m_form->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        show(Shown::List);
    report(result);
}

void GaugesPanel::saveCheck()
{
    const auto result = presenter().save(m_check->entry(), m_checked);
    if (result)
        m_check->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        show(Shown::List);
    report(result);
}

void GaugesPanel::changeUse()
{
    if (const GaugeRow* row = chosen())
        report(presenter().setInUse(row->gauge.id, !row->gauge.inUse));
}

} // namespace rig
