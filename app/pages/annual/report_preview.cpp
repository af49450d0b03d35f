#include "app/pages/annual/report_preview.h"

#include "app/pages/paper_box.h"
#include "app/pages/prompts.h"
#include "app/report/review_files.h"
#include "app/widgets/laying_out.h"
#include "app/widgets/long_work.h"
#include "app/widgets/pages_view.h"
#include "app/widgets/parts.h"
#include "app/widgets/work_behind.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/chain_words.h"
#include "app/wording/long_work_words.h"
#include "app/wording/preview_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"

#include <QCheckBox>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QHideEvent>
#include <QLineEdit>
#include <QTimer>
#include <QVBoxLayout>

#include <chrono>

namespace rig {

namespace {

constexpr double kPreviewZoom = 1.25;
constexpr qint64 kReadAtATime = 20; // milliseconds: a window that is not missed for it

} // namespace

ReportPreview::ReportPreview(Prompts& prompts, QWidget* parent) : QWidget{parent}, m_prompts{prompts}
{
    setObjectName("reportPreview");
    setAccessibleName(PreviewWords::title());
    setFocusPolicy(Qt::ClickFocus); // Tab passes it: whoever comes here by Tab would go on to the pages
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    addHead(layout);
    m_pages = new PagesView;
    layout->addWidget(m_pages, 1);
    m_behind = new WorkBehind{this};
    m_layingOut = new LayingOut{*m_behind, PreviewWords::layingOut()};
    m_pages->coverWith(m_layingOut);
    connect(m_layingOut, &LayingOut::stopAsked, this, &ReportPreview::backAsked);
    connect(m_behind, &WorkBehind::finishAsked, this, &ReportPreview::readTheRest);
    m_turns = new QTimer{this};
    connect(m_turns, &QTimer::timeout, this, &ReportPreview::readSome);
    addFoot(layout);
    connect(m_pages, &PagesView::pageChanged, this, [this](int page, int count) {
        m_page->setText(PreviewWords::page(page + 1, count));
        m_page->show();
    });
}

ReportPreview::~ReportPreview()
{
    delete m_behind; // before what it hands over to
}

void ReportPreview::addHead(QVBoxLayout* layout)
{
    auto* holder = new QWidget;
    auto* row = new WrapLayout{8, false, holder};
    row->setContentsMargins(20, 12, 20, 8);
    auto* title = labelOf(PreviewWords::title(), "section");
    title->setWordWrap(false);
    m_page = labelOf(PreviewWords::page(1, 1), "soft", "previewPage");
    QSizePolicy keepsItsRoom = m_page->sizePolicy(); // so that no button moves when the pages come
    keepsItsRoom.setRetainSizeWhenHidden(true);
    m_page->setSizePolicy(keepsItsRoom);
    m_page->hide();
    m_page->setWordWrap(false);
    auto* smaller = buttonOf(PreviewWords::smaller(), "previewSmaller");
    auto* larger = buttonOf(PreviewWords::larger(), "previewLarger");
    auto* fit = buttonOf(PreviewWords::fit(), "previewFit");
    m_paper = new PaperBox{"previewPaper", PreviewWords::paper()};
    m_paper->setToolTip(PreviewWords::paper());
    m_appendix = new QCheckBox{PreviewWords::appendix()};
    m_appendix->setObjectName("previewAppendix");
    m_appendix->setToolTip(PreviewWords::appendixHint());
    m_appendix->setAccessibleDescription(PreviewWords::appendixHint());
    m_appendix->setChecked(true);
    m_typedEnds = new QLineEdit;
    m_typedEnds->setObjectName("previewEnds");
    m_typedEnds->setPlaceholderText(PreviewWords::ends());
    m_typedEnds->setAccessibleName(PreviewWords::ends());
    m_typedEnds->setToolTip(ChainWords::printHint());
    m_typedEnds->setAccessibleDescription(ChainWords::printHint());
    auto* save = buttonOf(PreviewWords::save(), "previewSave", "primary");
    auto* back = buttonOf(PreviewWords::back(), "previewBack");
    for (QWidget* one : std::initializer_list<QWidget*>{title, m_page, smaller, larger, fit, m_paper,
                                                        m_appendix, m_typedEnds, save, back})
        row->addWidget(one);
    layout->addWidget(holder);
    connect(smaller, &QPushButton::clicked, this, [this] { m_pages->zoomBy(1 / kPreviewZoom); });
    connect(larger, &QPushButton::clicked, this, [this] { m_pages->zoomBy(kPreviewZoom); });
    connect(fit, &QPushButton::clicked, this, [this] { m_pages->fitWidth(); });
    connect(m_paper, &QComboBox::currentIndexChanged, this, [this] { lay(); });
    connect(m_appendix, &QCheckBox::toggled, this, [this] { lay(); });
    connect(m_typedEnds, &QLineEdit::editingFinished, this, &ReportPreview::compareEnds);
    connect(save, &QPushButton::clicked, this, &ReportPreview::save);
    connect(back, &QPushButton::clicked, this, &ReportPreview::backAsked);
}

void ReportPreview::addFoot(QVBoxLayout* layout)
{
    m_said = labelOf(PreviewWords::hint(), "soft", "previewSaid");
    m_said->setContentsMargins(20, 6, 20, 8);
    layout->addWidget(m_said);
}

void ReportPreview::compareEnds()
{
    std::vector<std::string> ends;
    for (const QString& typed : m_typedEnds->text().split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto end = readShortForm(typed.toStdString());
        if (!end)
            return m_said->setText(ChainWords::noShortForm(typed.trimmed()));
        ends.push_back(*end);
    }
    m_said->setText(PreviewWords::hint());
    if (ends == m_ends)
        return;
    m_ends = std::move(ends);
    readEvidence();
    lay();
    QStringList said;
    if (m_file)
        for (const ComparedPrint& print : m_file->prints)
            said << ChainWords::print(print, m_file->chain ? m_file->chain->faults : 0);
    if (!said.isEmpty())
        m_said->setText(said.join(QLatin1Char('\n')));
}

void ReportPreview::readEvidence()
{
    m_file.reset();
    if (!m_evidenceOf)
        return;
    auto evidence = m_evidenceOf(m_ends);
    if (evidence)
        m_file = std::move(evidence).value();
    else
        emit problemArose(ProblemWords::sentence(evidence.problem(), {}));
}

void ReportPreview::display(AirframeFacts facts, const ReviewPeriod& period, Day today, EvidenceOf evidenceOf,
                            ContentOf contentOf)
{
    m_evidenceOf = std::move(evidenceOf);
    readEvidence();
    m_contentOf = std::move(contentOf);
    m_period = period;
    if (m_file && m_file->chain) // looked at since, where another program wrote
        facts.inDoubt = m_file->chain->inDoubt;
    m_today = today;
    m_said->setText(PreviewWords::hint());
    m_page->hide();
    m_pages->clear();
    m_behind->stop();
    m_facts.reset();
    m_laying = {};
    m_layingOut->begin();
    m_reading = std::move(facts);
    if (m_contentOf)
        m_reading->contents.clear();
    readSome();
}

// Whether there may be more.
bool ReportPreview::readOne()
{
    const std::size_t next = m_reading->contents.size();
    if (!m_contentOf || next == m_reading->riggingRecords.size()) {
        m_turns->stop();
        m_facts = std::make_shared<const AirframeFacts>(std::move(*m_reading));
        m_reading.reset();
        lay();
        return false;
    }
    auto content = m_contentOf(m_reading->riggingRecords[next].id);
    if (content) {
        m_reading->contents.push_back(std::move(content).value());
        return true;
    }
    m_turns->stop();
    m_reading.reset();
    m_layingOut->end();
    emit problemArose(ProblemWords::sentence(content.problem(), {}));
    return false;
}

void ReportPreview::readSome()
{
    QElapsedTimer since;
    since.start();
    while (m_reading && readOne())
        if (since.elapsed() >= kReadAtATime)
            return m_turns->start(0);
}

void ReportPreview::readTheRest()
{
    while (m_reading && readOne()) {
    }
}

void ReportPreview::setLook(const Look& look)
{
    m_pages->setLook(look);
}

Printing ReportPreview::printing() const
{
    return {m_paper->paper(), m_today, ReportWords::program(QCoreApplication::applicationVersion()),
            m_appendix->isChecked(), m_file};
}

// What is shown stays until the other pages are there, or it is told that they are being laid out.
void ReportPreview::lay()
{
    if (!m_facts)
        return;
    auto promise = std::make_shared<std::promise<std::shared_ptr<const Laid>>>();
    m_laying = promise->get_future().share();
    m_behind->begin(
        [facts = m_facts, period = m_period, wanted = printing(), promise](Progress& progress) {
            WorkInParts parts{&progress, {1, 3}};
            auto laid = std::make_shared<Laid>(Laid{airframeReviewOf(*facts, period), {}});
            parts.endPart();
            laid->flow = layoutReview(*facts, laid->review, wanted, &parts);
            std::shared_ptr<const Laid> made = parts.endPart() ? std::move(laid) : nullptr;
            promise->set_value(made);
            return made;
        },
        [this](std::shared_ptr<const Laid> laid) { showPages(std::move(laid)); });
    m_layingOut->begin();
}

void ReportPreview::showPages(std::shared_ptr<const Laid> laid)
{
    const bool hadFocus = m_layingOut->isAncestorOf(window()->focusWidget());
    m_layingOut->end();
    if (hadFocus)
        m_pages->setFocus();
    m_pages->setPages({laid, &laid->flow});
}

// The pages of that setting, once they are there; null where that was stopped.
std::shared_ptr<const ReportPreview::Laid> ReportPreview::awaited(const Laying& laying, Progress& progress)
{
    constexpr std::chrono::milliseconds kAskEvery{20};
    while (progress.goOn(0, 0))
        if (laying.wait_for(kAskEvery) == std::future_status::ready)
            return laying.get();
    return nullptr;
}

// The choices as they stand at the press, also where their pages are still being laid out: it waits for them.
void ReportPreview::save()
{
    readTheRest();
    if (!m_laying.valid())
        return;
    const Laying laying = m_laying;
    const QString path =
        m_prompts.askSaveFile(this, PreviewWords::pdfFiles(), reviewFileName(m_facts->airframe, m_period));
    if (path.isEmpty())
        return;
    const QString folder = tablesFolderFor(path);
    if (QFileInfo::exists(folder) &&
        !m_prompts.confirm(this, PreviewWords::replaceTitle(), PreviewWords::replace(folder),
                           PreviewWords::replaceYes()))
        return;
    QString failed;
    bool isLaid = false;
    bool isWritten = false;
    const auto facts = m_facts;
    const QString program = printing().program;
    const bool isStopped = !LongWork::run(
        *window(), LongWorkWords::writing(QFileInfo{path}.fileName()), [&](Progress& progress) {
            const auto laid = awaited(laying, progress);
            isLaid = laid != nullptr;
            if (isLaid)
                isWritten = bool{
                    writeReviewFiles(path, *facts, laid->review, laid->flow, program, failed, &progress)};
        });
    if ((isStopped || !isLaid) && !isWritten)
        m_said->setText(LongWorkWords::stopped());
    else if (isWritten)
        m_said->setText(PreviewWords::saved(path, folder));
    else
        emit problemArose(ReviewReportWords::cannotWrite(path, failed));
}

void ReportPreview::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        emit backAsked();
    else if (isKey(*event, PreviewWords::keySave()))
        save();
    else if (isKey(*event, PreviewWords::keyPaper()))
        m_paper->setCurrentIndex((m_paper->currentIndex() + 1) % m_paper->count());
    else if (isKey(*event, PreviewWords::keyAppendix()))
        m_appendix->toggle();
    else if (isKey(*event, PreviewWords::keyEnds()))
        m_typedEnds->setFocus(Qt::ShortcutFocusReason);
    else
        QWidget::keyPressEvent(event);
}

// Shown again with nothing said to it: what was left off is begun again.
void ReportPreview::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (event->spontaneous() || m_pages->pageCount() > 0 || m_behind->isGoing())
        return;
    if (m_reading)
        m_turns->start(0);
    else
        lay();
}

void ReportPreview::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (event->spontaneous()) // by the desktop: it comes back as it was
        return;
    if (m_behind->isGoing())
        m_pages->clear(); // they would not be those of the choices
    m_turns->stop();
    m_behind->stop();
    m_layingOut->end();
}

void ReportPreview::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    m_pages->setFocus();
}

} // namespace rig
