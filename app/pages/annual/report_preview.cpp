#include "app/pages/annual/report_preview.h"
#include "app/pages/paper_box.h"
#include "app/pages/prompts.h"
#include "app/report/review_files.h"
#include "app/widgets/long_work.h"
#include "app/widgets/pages_view.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/chain_words.h"
#include "app/wording/long_work_words.h"
#include "app/wording/preview_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"

#include <QCheckBox>
#include <QFileInfo>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr double kPreviewZoom = 1.25;

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
    addFoot(layout);
    connect(m_pages, &PagesView::pageChanged, this,
            [this](int page, int count) { m_page->setText(PreviewWords::page(page + 1, count)); });
}

void ReportPreview::addHead(QVBoxLayout* layout)
{
    auto* holder = new QWidget;
    auto* row = new WrapLayout{8, false, holder};
    row->setContentsMargins(20, 12, 20, 8);
    auto* title = labelOf(PreviewWords::title(), "section");
    title->setWordWrap(false);
    m_page = labelOf(PreviewWords::page(1, 1), "soft", "previewPage");
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

void ReportPreview::display(AirframeFacts facts, const ReviewPeriod& period, Day today, EvidenceOf evidenceOf)
{
    m_evidenceOf = std::move(evidenceOf);
    readEvidence();
    m_facts = std::move(facts);
    m_today = today;
    m_said->setText(PreviewWords::hint());
    m_review = airframeReviewOf(m_facts, period);
    lay();
    m_pages->goTo(0);
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

void ReportPreview::lay()
{
    m_pages->setPages(layoutReview(m_facts, m_review, printing()));
}

void ReportPreview::save()
{
    const QString path = m_prompts.askSaveFile(this, PreviewWords::pdfFiles(),
                                               reviewFileName(m_review.airframe, m_review.period));
    if (path.isEmpty())
        return;
    const QString folder = tablesFolderFor(path);
    if (QFileInfo::exists(folder) &&
        !m_prompts.confirm(this, PreviewWords::replaceTitle(), PreviewWords::replace(folder),
                           PreviewWords::replaceYes()))
        return;
    QString failed;
    bool isWritten = false;
    const Printing wanted = printing(); // of the widgets, which no other thread touches
    const bool isStopped = !LongWork::run(
        *window(), LongWorkWords::writing(QFileInfo{path}.fileName()), [&](Progress& progress) {
            isWritten = bool{writeReviewFiles(path, m_facts, m_review, wanted, failed, &progress)};
        });
    if (isStopped && !isWritten)
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

void ReportPreview::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    m_pages->setFocus();
}

} // namespace rig
