#include "app/pages/rigged_today/summary_panel.h"

#include "app/pages/paper_box.h"
#include "app/pages/prompts.h"
#include "app/widgets/block_column.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/entry_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "app/wording/summary_words.h"
#include "app/wording/verdict_words.h"
#include "core/either.h"
#include "core/rigging/time_known.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rig {

SummaryPanel::SummaryPanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : QWidget{parent}, m_presenter{records, clock}, m_prompts{prompts}
{
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout{inside};
    layout->setContentsMargins(28, 24, 28, 24);
    layout->setSpacing(12);
    m_blocks = new BlockColumn;
    layout->addWidget(m_blocks);
    addCorrection(layout);
    layout->addStretch(1);
    outer->addWidget(new FlowScroll{inside}, 1);
    addButtons(outer);
}

void SummaryPanel::addButtons(QVBoxLayout* layout)
{
    m_said = labelOf({}, "soft", "summarySaid");
    m_said->setContentsMargins(28, 6, 28, 0);
    layout->addWidget(m_said);
    auto* holder = new QWidget;
    auto* row = new WrapLayout{8, false, holder};
    row->setContentsMargins(28, 10, 28, 12);
    auto* print = buttonOf(SummaryWords::print(), "printRecord", "primary");
    auto* back = buttonOf(SummaryWords::back(), "summaryBack");
    m_paper = new PaperBox{"paper", SummaryWords::paper()};
    for (QWidget* one : std::initializer_list<QWidget*>{print, m_paper, back})
        row->addWidget(one);
    layout->addWidget(holder);
    connect(print, &QPushButton::clicked, this, &SummaryPanel::print);
    connect(back, &QPushButton::clicked, this, &SummaryPanel::backAsked);
}

void SummaryPanel::addCorrection(QVBoxLayout* layout)
{
    m_correction = new QWidget;
    auto* column = new QVBoxLayout{m_correction};
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(8);
    column->addWidget(labelOf(SummaryWords::correctTitle(), "section"));
    column->addWidget(labelOf(SummaryWords::correctMeaning(), "soft"));
    m_reading = new ChoiceBox{SummaryWords::whichReading()};
    m_reading->setObjectName("correctReading");
    m_figure = new QLineEdit;
    m_figure->setObjectName("correctFigure");
    m_figure->setPlaceholderText(SummaryWords::figureHint());
    m_figure->setAccessibleName(SummaryWords::figure());
    m_reason = new QLineEdit;
    m_reason->setObjectName("correctReason");
    m_reason->setPlaceholderText(SummaryWords::reasonHint());
    m_reason->setAccessibleName(SummaryWords::reason());
    m_who = new ChoiceBox{SummaryWords::who()};
    m_who->setObjectName("correctWho");
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(SummaryWords::whichReading(), m_reading);
    form->addRow(SummaryWords::figure(), m_figure);
    form->addRow(SummaryWords::reason(), m_reason);
    form->addRow(SummaryWords::who(), m_who);
    column->addLayout(form);
    m_refused = labelOf({}, "problem", "correctProblem");
    column->addWidget(m_refused);
    auto* correct = buttonOf(SummaryWords::correct(), "correctNow");
    column->addWidget(correct, 0, Qt::AlignLeft);
    layout->addWidget(m_correction);
    connect(correct, &QPushButton::clicked, this, &SummaryPanel::correct);
}

void SummaryPanel::setLook(const Look& look)
{
    m_blocks->setLook(look);
}

Outcome SummaryPanel::showRecord(AirframeId airframe, RecordId record)
{
    auto view = m_presenter.view(airframe, record);
    if (!view)
        return view.problem();
    m_view = std::move(view).value();
    sayIn(m_said, {});
    display();
    return Done{};
}

Outcome SummaryPanel::showLast(AirframeId airframe)
{
    const auto last = m_presenter.lastClosed(airframe);
    if (!last)
        return last.problem();
    if (!last.value())
        return Problem{ProblemKind::NotFound, "no closed record"};
    return showRecord(airframe, *last.value());
}

void SummaryPanel::display()
{
    m_blocks->display(recordBlocks(m_view.summary));
    const Formats formats;
    m_reading->begin(SummaryWords::chooseReading());
    for (const SummaryCoupling& coupling : m_view.summary.couplings)
        for (const SummaryReading& one : coupling.readings)
            if (!one.replaced)
                m_reading->add(SummaryWords::reading(
                                   QString::fromStdString(coupling.coupling.name),
                                   formats.interval(one.reading.interval), QString::fromStdString(one.person),
                                   isTimeKnown(one.reading) ? formats.time(one.reading.when)
                                                            : formats.whenRead(one.reading)),
                               one.reading.id);
    m_correction->setVisible(m_view.summary.close && m_reading->count() > 1);
    m_who->begin(SummaryWords::chooseWho());
    for (const Person& person : m_view.persons)
        m_who->add(QString::fromStdString(person.name), person.id);
    m_figure->clear();
    m_reason->clear();
    sayIn(m_refused, {});
}

const SummaryReading* SummaryPanel::chosenReading() const
{
    const auto chosen = m_reading->chosen<ReadingId>();
    for (const SummaryCoupling& coupling : m_view.summary.couplings)
        for (const SummaryReading& one : coupling.readings)
            if (chosen == one.reading.id)
                return &one;
    return nullptr;
}

void SummaryPanel::print()
{
    const QString path =
        m_prompts.askSaveFile(this, SummaryWords::pdfFiles(), recordFileName(m_view.summary));
    if (path.isEmpty())
        return;
    if (m_presenter.print(m_view, path, m_paper->paper()))
        sayIn(m_said, ReportWords::written(path));
    else
        emit problemArose(ReportWords::cannotWrite(path));
}

QString SummaryPanel::refusalOf(const CorrectionRefusal& refusal) const
{
    const QString typed = m_figure->text().trimmed();
    return std::visit(Either{[&](EntryProblem problem) { return EntryWords::refusal(problem, typed); },
                             [&](const GaugeRefusal& one) {
                                 const GapEntry asked = parseGap(typed.toStdString());
                                 return EntryWords::refusal(one, std::get<Gap>(asked));
                             },
                             [](IntervalProblem problem) { return SummaryWords::notAnInterval(problem); },
                             [](NoTwoFigures) { return SummaryWords::needsTwoFigures(); }},
                      refusal);
}

void SummaryPanel::correct()
{
    const SummaryReading* wrong = chosenReading();
    if (!wrong)
        return sayIn(m_refused, SummaryWords::readingMissing());
    const auto typed = m_presenter.intervalFrom(*wrong, m_figure->text().toStdString());
    if (!typed) {
        emit problemArose(ProblemWords::sentence(typed.problem(), {}));
        return;
    }
    if (const auto* refusal = std::get_if<CorrectionRefusal>(&typed.value()))
        return sayIn(m_refused, refusalOf(*refusal));
    const QString reason = m_reason->text().trimmed();
    if (reason.isEmpty())
        return sayIn(m_refused, SummaryWords::reasonMissing());
    const auto who = m_who->chosen<PersonId>();
    if (!who)
        return sayIn(m_refused, SummaryWords::whoMissing());
    const GapInterval interval = std::get<GapInterval>(typed.value());
    const auto verdict =
        m_presenter.correct(m_view, {wrong->reading.id, interval, reason.toStdString(), *who});
    const Outcome shown = verdict ? showRecord(m_view.summary.airframe.id, m_view.summary.record.id)
                                  : Outcome{verdict.problem()};
    if (!shown) {
        emit problemArose(ProblemWords::sentence(shown.problem(), {}));
        return;
    }
    QStringList said{SummaryWords::corrected(Formats{}.interval(interval))};
    if (verdict.value() == Verdict::Outside) {
        said << VerdictWords::word(verdict.value()) << cautionOfToday();
    }
    sayIn(m_said, said.join(QLatin1Char('\n')));
    emit changed();
}

// What lies outside stops a rigging of today; of one gone by it is asked what was done.
QString SummaryPanel::cautionOfToday() const
{
    const Day day = m_view.summary.record.begins.localDay();
    if (day != m_presenter.today())
        return VerdictWords::outsideThen(Formats{}.day(day));
    const Airframe& airframe = m_view.summary.airframe;
    return VerdictWords::caution(Verdict::Outside, QString::fromStdString(airframe.callName),
                                 QString::fromStdString(airframe.callPhone));
}

bool SummaryPanel::takeKey(QKeyEvent* event)
{
    if (isKey(*event, SummaryWords::keyPrint()))
        print();
    else if (isKey(*event, SummaryWords::keyBack()))
        emit backAsked();
    else
        return false;
    return true;
}

} // namespace rig
